using System.CommandLine;
using Evengrist.Cli.Said;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>Packing.</summary>
internal static class PackingRoom
{
    public static Command Of(Voice voice, IClock clock) => new("packing", "Flour in packages: in which order lines pack it, whether packages hold what they declare.")
    {
        PackingPlanVerb.Of(voice, clock),
        PackingOrdersVerbs.Of(voice, clock),
        NetContentVerb.Of(voice),
        ContentVerbs.Of(voice, clock),
        LoadVerb.Of(voice, clock),
        ReworkVerb.Of(voice, clock),
    };
}
