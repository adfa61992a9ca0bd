using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant.Imports;
using NodaTime;

namespace Evengrist.Cli.Rooms;

internal static class IntakeRoom
{
    public static Command Of(Voice voice, IClock clock) => new("intake", "Tickets of trucks and railcars.") { ImportVerb.Of(ImportKind.Intake, voice, clock) };
}
