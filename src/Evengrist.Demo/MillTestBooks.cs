using Evengrist.Milling.Learning;
using Evengrist.Milling.OnPaper;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Records.Milling;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>Mill tests of Unit A, week by week before the demonstration opens: what the hidden mill did, with the errors of measuring. Its third coarse break wears from the fifth test on, and from the thirteenth the flour cloth of M2 is torn; nobody wrote either down.</summary>
internal static class MillTestBooks
{
    private const string Unit = "UA";
    private const int WearsFrom = 4, TornFrom = 12;
    private static readonly LocalDate First = new(2025, 9, 22);
    private static readonly LocalDate Christmas = new(2025, 12, 22);
    private static readonly string[] Tested = ["B1", "B2", "B3C", "B3F", "B4C", "B4F", "S1", "M1", "M2", "M3"];
    private static readonly int[] Surveyed = [1, 5, 9, 12, 14, 15];

    /// <summary>Mondays on which a test was taken.</summary>
    private static IEnumerable<LocalDate> Days => Enumerable.Range(0, 17).Select(week => First.PlusDays(7 * week)).Where(day => day != Christmas);

    /// <summary>Keeps them, through the use case a person's go through.</summary>
    public static void Keep(Mill mill, ulong seed)
    {
        foreach (var paper in Papers(seed))
        {
            if (MillTests.Keep(mill, paper, paper.TakenBy, 0, MillCalendar.OpeningMoment).Faults is { Count: > 0 } faults)
            {
                throw new InvalidOperationException(string.Join(" ", faults));
            }
        }
    }

    /// <summary>The tests.</summary>
    public static IEnumerable<MillTestPaper> Papers(ulong seed)
    {
        var (sheet, hidden, dice) = (HouseFlowSheets.Of('A'), new HiddenMill(HouseFlowSheets.Of('A'), seed), new Dice(seed, "mill tests"));
        foreach (var (week, day) in Days.Index())
        {
            if (week > WearsFrom)
            {
                hidden.Wear("B3C", 0.02);
            }

            if (week == TornFrom)
            {
                hidden.Tear("M2", 1, 0.12);
            }

            // One gap was moved on purpose and written down: that is no drift.
            var set = new SheetChange { GapMicrometres = week < 8 ? new Dictionary<string, double>() : new Dictionary<string, double> { ["M1"] = 60 } };
            var (flow, moisture, protein, hardness, ash) = (Math.Round(dice.Normal(17.5, 0.15), 2), Math.Round(dice.Normal(16, 0.1), 1), Math.Round(dice.Normal(14.4, 0.2), 2), Math.Round(dice.Normal(65, 1)), Math.Round(dice.Normal(1.7, 0.015), 3));
            var wheat = new PosedWheat(flow, moisture, ash, protein, Basis.Dry) { Hardness = hardness, FallingNumber = 380 };
            var test = hidden.Test("", set.Apply(sheet), wheat.Of(), Tested);
            yield return new MillTestPaper(Unit, MillCalendar.At(day, 9), week % 3 == 2 ? "Femi Strand" : "Dr Anya Holt", 1, wheat with { AshPercent = Math.Round(test.Wheat.AshPercentDry, 2) })
            {
                Set = set,
                Releases = test.Releases.ToDictionary(r => r.Passage, r => Math.Round(r.ReleasePercent, 1)),
                Streams = !Surveyed.Contains(week) ? [] : [.. test.Streams.Select(s => new PosedStream(s.Product, Math.Round(s.YieldPercent, 2))
                {
                    AshPercent = Math.Round(s.AshPercentDry!.Value / Basis.At14.ToDry, 3), ProteinPercent = Math.Round(s.ProteinPercentDry!.Value / Basis.At14.ToDry, 2),
                })],
                Remark = week == 8 ? "Gap of M1 closed from 65 to 60 µm on the miller's order." : "",
            };
        }
    }
}
