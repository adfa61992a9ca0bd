using System.Globalization;
using Evengrist.Intake.Sampling;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Demo;

/// <summary>Samples of the harvest: one truck in five is written down with a retained part; and the papers that sampling goes by. Invented.</summary>
internal static class SamplingDesk
{
    private const string By = "Dr Anya Holt";
    private const int OneIn = 5;

    /// <summary>Days a retained sample stands on its shelf.</summary>
    public const int KeepDays = 190;

    public static SamplingPolicy Policy { get; } = new()
    {
        KeepDays = KeepDays, Shelf = "A", UsualProbes = 6,
        Spreads = [new(Property.Moisture, 0.15, 0.05, 0.15), new(Property.Protein, 0.40, 0.10, 0.15), new(Property.TestWeight, 0.5, 0.1, 0.2)],
    };

    public static TestCosts Costs { get; } = new()
    {
        Currency = "USD", CostPerMinute = 1.33, HistoryDays = 21, Source = "Invented for the demonstration; a truck waits at 80 USD an hour",
        Tests =
        [
            new(Property.FallingNumber, default, 300, 8, 4) { WrongBinPerTonne = 18, Claim = 0, DivertedGoodPerTonne = 7, DiscountPerTonne = 9, RelativeError = 0.05 },
            new(Property.Don, Basis.At12, 1.0, 12, 9) { WrongBinPerTonne = 12, Claim = 150, DivertedGoodPerTonne = 7, DiscountPerTonne = 6 },
        ],
    };

    public static void KeepPapers(Mill mill)
    {
        mill.Papers(SamplingPolicy.Kind).Keep(SamplingPolicy.Code, 1, Policy.ToJson(), By);
        mill.Papers(TestCosts.Kind).Keep(TestCosts.Code, 1, Costs.ToJson(), By);
    }

    /// <summary>Writes the sample of a truck down; by its number of the day, so that no dice are thrown for it.</summary>
    public static void Write(Desk desk, string ticket, int number, LocalDate day, Instant at)
    {
        if (number % OneIn != 1)
        {
            return;
        }

        var shelf = string.Create(CultureInfo.InvariantCulture, $"{(day.Month == 7 ? 'J' : 'A')}{day.Day:00}");
        var taken = new SampleTaken(ProbePatterns.UsHopperBottom.Code, 6, 2000 + (number * 37 % 9 * 100), $"R-{ticket}", shelf, LocalDatePattern.Iso.Format(day.PlusDays(KeepDays)));
        desk.Happened(ticket, at, HappeningKind.Sampled, taken.Text);
    }
}
