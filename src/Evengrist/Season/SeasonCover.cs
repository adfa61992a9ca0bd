using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Season;

/// <summary>How long a flour lasts under a plan.</summary>
/// <param name="Flour">Code of the flour.</param>
/// <param name="StarveDate">The day on which it first is not made in full or misses a limit; null where it lasts to the end of the plan.</param>
/// <param name="Weeks">Weeks from the start up to that day, or to the end of the plan.</param>
/// <param name="Limiting">The property it misses then, or whose limit keeps it from being made in full; null where hours or wheat are wanting, or nothing is.</param>
/// <param name="MissedTonnes">t of wheat mix that miss a limit over the whole plan.</param>
/// <param name="UnmetTonnes">t of flour not made over the whole plan.</param>
public sealed record SeasonCover(string Flour, LocalDate? StarveDate, double Weeks, Property? Limiting, double MissedTonnes, double UnmetTonnes);
