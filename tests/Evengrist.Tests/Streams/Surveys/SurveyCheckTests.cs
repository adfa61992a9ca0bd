using Evengrist.Numerics.Reconciling;
using Evengrist.Quantities;
using Evengrist.Streams;
using Evengrist.Streams.Dividing;
using Evengrist.Streams.Surveys;
using NodaTime;

namespace Evengrist.Tests.Streams.Surveys;

/// <summary>A survey held against the weighers of its flours. Streams are made up; the sums are by hand.</summary>
public sealed class SurveyCheckTests
{
    // 10 t/h of wheat: 1M 2, 2M 3, 3M 2 t/h to the patent, 4M 1 to the clear.
    private static readonly (string Code, double Tonnes, double Ash, double Protein, string To)[] True = [("1M", 2, 0.40, 10, "P"), ("2M", 3, 0.45, 11, "P"), ("3M", 2, 0.60, 13, "P"), ("4M", 1, 1.20, 12, "C")];

    // By hand: (0.8 + 1.35 + 1.2)/7 = 0.478571 %, (20 + 33 + 26)/7 = 11.285714 %.
    private static readonly WeighedFlour Patent = new("P", 7, 0.005, 3.35 / 7, 79.0 / 7);

    [Fact]
    public void Check_OfWhatFits_ChangesNothing()
    {
        var outcome = SurveyCheckModel.Of(new SurveyCheckSpec(Survey(), [Patent, new("C", 1, 0.005, 1.2, null)]));
        Assert.Equal(0, Assert.IsType<NoGrossError>(outcome.Found).Adjusted.Squares, 1e-9);
        Assert.Equal(True.Select(s => s.Tonnes * 10), outcome.Adjusted!.Streams.Select(s => Math.Round(s.Yield, 9)));
        Assert.Equal(5, ((NoGrossError)outcome.Found).Adjusted.Freedom); // mass, ash and protein of P, mass and ash of C; protein of C gives the one that was not read
    }

    // All streams together are then just 100 % of the wheat, which the survey by itself lets pass: only the weighers know.
    [Theory]
    [InlineData("1M")]
    [InlineData("3M")]
    public void Check_OfAStreamWeighedTwice_NamesItAndGivesItsYieldBack(string twice)
    {
        var survey = Survey(twice);
        Assert.Empty(survey.Faults());
        var outcome = SurveyCheckModel.Of(new SurveyCheckSpec(survey, [Patent]));
        var suspect = Assert.IsType<GrossErrorsNamed>(outcome.Found).Suspects[0];
        Assert.Equal(twice, suspect.Name);
        var tonnes = True.First(s => s.Code == twice).Tonnes;
        Assert.Equal(tonnes, suspect.Bias!.Value, 0.15); // As much again as there was.
        Assert.Equal(10 * tonnes, outcome.Adjusted!.Streams.First(s => s.Code == twice).Yield, 1.5);
    }

    [Fact]
    public void Check_OfAWeigherThatIsOff_NamesTheWeigher()
    {
        var outcome = SurveyCheckModel.Of(new SurveyCheckSpec(Survey(), [Patent with { TonnesPerHour = 7.7 }, new("C", 1, 0.005, 1.2, null)]) { OnTheRolls = (10.6, 0.005), NotFlour = (2.6, 0.005) });
        var suspect = Assert.IsType<GrossErrorsNamed>(outcome.Found).Suspects[0];
        Assert.Equal((SurveyCheckModel.Weigher("P"), 0.7), (suspect.Name, Math.Round(suspect.Bias!.Value, 1)));
    }

    [Fact]
    public void Check_OfRandomErrors_RaisesAboutOneFalseAlarmInTwenty()
    {
        var random = new Random(7);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        var alarms = Enumerable.Range(0, 400).Count(_ =>
        {
            var survey = Survey();
            var streams = survey.Table.Streams.Select(s => s with { Yield = s.Yield * (1 + (0.02 * Normal())), AshPercent = s.AshPercent + (0.01 * Normal()), ProteinPercent = s.ProteinPercent + (0.1 * Normal()) });
            var noisy = survey with { Table = survey.Table with { Streams = [.. streams] } };
            return SurveyCheckModel.Of(new SurveyCheckSpec(noisy, [new("P", 7 * (1 + (0.005 * Normal())), 0.005, (3.35 / 7) + (0.01 * Normal()), (79.0 / 7) + (0.1 * Normal()))])).Found is not NoGrossError;
        });
        Assert.InRange(alarms, 8, 36); // 20 expected of 400 at a chance of 0.05, ± 3.7 of the binomial's spreads.
    }

    [Fact]
    public void Check_WithoutAshOfTheFlour_FindsItAndIsHeldByMassAlone()
    {
        var outcome = SurveyCheckModel.Of(new SurveyCheckSpec(Survey(), [Patent with { AshPercent = null, ProteinPercent = null }]));
        var fits = Assert.IsType<NoGrossError>(outcome.Found).Adjusted;
        Assert.Equal(1, fits.Freedom);
        Assert.Equal(3.35 / 700, fits[$"ash of {SurveyCheckModel.Weigher("P")}"].Value, 1e-9);
    }

    [Fact]
    public void Faults_OfWhatCannotBeHeldAgainst_NameEach()
    {
        IReadOnlyList<string> Faults(params WeighedFlour[] flours) => new SurveyCheckSpec(Survey(), flours).Faults();
        Assert.Contains("Nothing is there to hold the survey against", Assert.Single(Faults(new WeighedFlour("P", null, 0.005, null, null))), StringComparison.Ordinal);
        Assert.Contains("no stream of the survey went there", Assert.Single(Faults(new WeighedFlour("X", 5, 0.005, null, null))), StringComparison.Ordinal);
        Assert.Contains("stands there 2 times", Assert.Single(Faults(Patent, Patent)), StringComparison.Ordinal);
        Assert.Equal(4, Faults(new WeighedFlour("P", -1, 0, 14, 50)).Count);
        Assert.Throws<ArgumentException>(() => SurveyCheckModel.Of(new SurveyCheckSpec(Survey(), [])));
    }

    private static StreamSurvey Survey(string twice = "") => new(
        "U", Instant.FromUtc(2026, 1, 14, 9, 0), "Ada", 10, new StreamTable([.. True.Select(s => new MillStream(s.Code, s.Tonnes * (s.Code == twice ? 20 : 10), s.Ash) { ProteinPercent = s.Protein })], Basis.At14))
    {
        Valves = [.. True.Select(s => new StreamValve(s.Code) { Now = s.To })],
    };
}
