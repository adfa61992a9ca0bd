using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant.Imports;
using NodaTime;

namespace Evengrist.Cli.Rooms;

internal static class MovementsRoom
{
    public static Command Of(Voice voice, IClock clock) => new("movements", "What went where.") { ImportVerb.Of(ImportKind.Movements, voice, clock) };
}
