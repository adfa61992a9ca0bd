using Evengrist.Bins.States;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>What befell bins that stood still: fumigations with their clearance, entries, a hold, a bin shut for mending. Invented.</summary>
internal static class BinEpisodes
{
    private static readonly GasClearance Cleared = new("Edda Marlin", "FA-1187", "below the limit of her meter at hatch, manhole and outlet");

    private static readonly (Instant At, string Bin, HappeningKind Kind, string Text)[] All =
    [
        (At(8, 18, 16), "B15", HappeningKind.UnderGas, "live beetles in a probe sample; applied and placarded by Edda Marlin, licence FA-1187"),
        (At(8, 26, 10), "B15", HappeningKind.GasCleared, Happening.TextOf(Cleared.Words, Cleared.ToJson())),
        (At(8, 26, 13), "B18", HappeningKind.PersonInside, "sweeping, permit 25-114, two inside, Jonas Pell outside"),
        (At(8, 26, 15), "B18", HappeningKind.PersonOut, "both out, permit 25-114 closed"),
        (At(10, 6, 8), "B18", HappeningKind.Shut, "roof hatch leaks; to be sealed"),
        (At(12, 2, 9), "B15", HappeningKind.Held, "musty at the hatch after rain"),
        (At(12, 4, 15), "B15", HappeningKind.Released, "hatch only; probe sample sound; released by Dr Anya Holt"),
        (At(1, 9, 15, 2026), "B16", HappeningKind.UnderGas, "weevils under the hatch; applied and placarded by Edda Marlin, licence FA-1187"),
        (At(1, 17, 11, 2026), "B16", HappeningKind.GasCleared, Happening.TextOf(Cleared.Words, Cleared.ToJson())),
        (At(2, 20, 14, 2026), "B18", HappeningKind.Reopened, "hatch sealed, hose-tested"),
    ];

    /// <summary>Those of a day.</summary>
    public static void Day(Desk desk, LocalDate day)
    {
        foreach (var (at, bin, kind, text) in All.Where(e => MillCalendar.MillingDay(e.At) == day))
        {
            desk.Happened(bin, at, kind, text);
        }
    }

    private static Instant At(int month, int day, int hour, int year = 2025) => MillCalendar.At(new LocalDate(year, month, day), hour);
}
