using Evengrist.Packing.Lines;
using Evengrist.Records;
using Evengrist.Records.Packing;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>The packing hall's own books: lines, rules for changing over, people, what the mill means to make, packaging loaded. All invented.</summary>
public static class HouseHall
{
    internal const string Lead = "Greta Sowden", Second = "Piet Larkin";
    private static readonly IsoDayOfWeek[] Week = [IsoDayOfWeek.Monday, IsoDayOfWeek.Tuesday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Friday, IsoDayOfWeek.Saturday];

    /// <summary>The lines and their rules.</summary>
    public static LineBook Book { get; } = new(
        [
            new("L1", 3, [new("WB-25", 20), new("AP-25", 20)]),
            new("L2", 3, [new("WB-2", 8), new("AP-2", 8), new("C1-25", 14), new("SM-1", 6, "F-AP")]),
            new("L3", 2, [new("HG-25", 12), new("PA-25", 12), new("WW-25", 12), new("WW-2", 7)]),
            new("SPOUT", 1, [new("WB-BULK", 75), new("HG-BULK", 75), new("PA-BULK", 75), new("C2-BULK", 75)]),
        ],
        [
            new("SM", null, 240) { FlushTonnes = 0.2, FlushTo = "waste", IsCleanDown = true },
            new("WW", null, 90) { FlushTonnes = 0.5, FlushTo = "rework tote" },
            new(null, "SM", 30),
            new("C1", null, 45) { FlushTonnes = 0.3, FlushTo = "rework tote" },
            new("WB", "AP", 20) { EitherWay = true },
            new(null, null, 30) { FlushTonnes = 0.1, FlushTo = "rework tote" },
        ],
        [new(Week, "06:00", "14:00", 9), new(Week, "14:00", "22:00", 9), new(Week, "22:00", "06:00", 9)])
    {
        PackChangeMinutes = 25, Signers = [Lead, Second],
    };

    /// <summary>What the mill means to make from the opening moment to the end of the week.</summary>
    public static MillCampaigns Campaigns { get; } = new([
        Of("F-WB", 14, 16, 23.3), Of("F-AP", 16, 17, 23.5), Of("F-HG", 14, 15, 10.3), Of("F-PA", 15, 17, 9.7), Of("F-WW", 17, 18, 12.5), Of("F-C1", 14, 17, 2.5), Of("F-C2", 14, 17, 2.2),
    ]);

    /// <summary>Keeps them, as persons would.</summary>
    public static void Keep(Mill mill)
    {
        KeepLineBook.Keep(mill, Book, Lead);
        KeepMillCampaigns.Keep(mill, Campaigns, "Osric Venn");
        foreach (var use in Packaging())
        {
            if (PackagingUses.Load(mill, use, Lead).Faults is { Count: > 0 } faults)
            {
                throw new InvalidOperationException(string.Join(" ", faults));
            }
        }
    }

    // Bags for a fortnight, film and labels for a week; one lot follows the other.
    private static IEnumerable<PackagingUse> Packaging()
    {
        for (var (day, n) = (MillCalendar.FirstDay, 1); day < new LocalDate(2026, 1, 15); (day, n) = (day.PlusWeeks(1), n + 1))
        {
            Instant? Until(int weeks) => day.PlusWeeks(weeks) < new LocalDate(2026, 1, 15) ? MillCalendar.At(day.PlusWeeks(weeks), 6) : null;
            var from = MillCalendar.At(day, 6);
            if (n % 2 == 1)
            {
                yield return new(PackagingKind.Bags, $"KB-{n:000}1", "Calderside Sacks", "L1", "", from, Until(2), "3");
                yield return new(PackagingKind.Bags, $"KB-{n:000}3", "Calderside Sacks", "L3", "", from, Until(2), "3");
            }

            yield return new(PackagingKind.Film, $"VF-{n:0000}", "Verrow Film", "L2", "", from, Until(1), "5");
            yield return new(PackagingKind.Cases, $"SW-{n:0000}", "Verrow Film", "L2", "", from, Until(1));
        }
    }

    private static MillCampaign Of(string bin, int from, int until, double rate) =>
        new(bin, Instant.Max(MillCalendar.OpeningMoment, MillCalendar.At(new LocalDate(2026, 1, from), 6)), MillCalendar.At(new LocalDate(2026, 1, until), 6), rate);
}
