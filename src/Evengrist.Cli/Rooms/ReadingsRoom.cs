using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant.Imports;
using NodaTime;

namespace Evengrist.Cli.Rooms;

internal static class ReadingsRoom
{
    public static Command Of(Voice voice, IClock clock) => new("readings", "What was measured.") { ImportVerb.Of(ImportKind.Readings, voice, clock) };
}
