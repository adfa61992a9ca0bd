using System.CommandLine;
using Evengrist.Cli.Said;

namespace Evengrist.Cli.Rooms;

/// <summary>Packing.</summary>
internal static class PackingRoom
{
    public static Command Of(Voice voice) => new("packing", "Flour in packages: whether they hold what they declare.")
    {
        NetContentVerb.Of(voice),
    };
}
