using Evengrist.Laboratory;
using Evengrist.Laboratory.Methods;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Tests.Laboratory.Methods;

public sealed class LabTableTests
{
    [Fact] // ISO 2171 from memory: r of ash 0.02 below 1 %, 2 % of the mean above; ISO 712-1 from memory: r of oven moisture 0.12.
    public void Start_HasTheFewFiguresKnownAndSaysTheyAreFromMemory()
    {
        Assert.Empty(LabMethods.Start.Faults());
        var ash = LabMethods.Start.Of("FURNACE", Property.Ash)!.Repeatability!;
        Assert.Equal([0.02m, 0.02m, 0.03m], new[] { 0.5m, 1.0m, 1.5m }.Select(ash.At));
        Assert.Equal(0.12m, LabMethods.Start.Of("oven 130 °C", Property.Moisture)!.Repeatability!.At(13.5m));
        Assert.Null(LabMethods.Start.Of("oven 130 °C", Property.Moisture)!.Reproducibility);
        Assert.All(LabMethods.Start.Methods.SelectMany(m => new[] { m.Repeatability, m.Reproducibility }).OfType<PrecisionLimit>(), l => Assert.Equal(FigureMark.Memory, l.Mark));
        Assert.Null(LabMethods.Start.Of("NIR", Property.Protein)!.StandardUncertaintyAt(12m));
        Assert.Equal(0.5m / 2.8m, LabMethods.Start.Of("combustion", Property.Protein)!.StandardUncertaintyAt(12m));
    }

    [Fact]
    public void Json_ThereAndBack_IsTheSame()
    {
        var json = LabMethodsJson.Write(LabMethods.Start);
        Assert.True(LabMethodsJson.TryRead(json, out var read, out _));
        Assert.Equal(json, LabMethodsJson.Write(read));
        var instruments = LabInstrumentsJson.Write(new LabInstruments([Nir]));
        Assert.True(LabInstrumentsJson.TryRead(instruments, out var again, out _));
        Assert.Equal(instruments, LabInstrumentsJson.Write(again));
    }

    [Theory]
    [InlineData("\"absolute\": 0.12", "\"absolute\": -1", "above 0")]
    [InlineData("\"basis\": \"14mb\"", "\"basis\": \"none\"", "moisture basis")]
    [InlineData("\"what\": \"FallingNumber\"", "\"what\": \"Protein\"", "is read in")]
    [InlineData("\"unit\": \"s\"", "\"unit\": \"h\"", "read \"h\"")]
    [InlineData("\"mark\": \"Memory\"", "\"mark\": \"None\"", "mark and source")]
    [InlineData("\"oddBeyond\": 80", "\"oddBeyond\": 0", "oddBeyond")]
    [InlineData("\"code\": \"gluten washing\"", "\"code\": \" \"", "has a code")]
    [InlineData("\"methods\"", "\"method\"", "method")]
    public void TryRead_ATableThatCannotBe_IsRefusedInWords(string what, string by, string said)
    {
        var json = LabMethodsJson.Write(LabMethods.Start);
        Assert.Contains(what, json, StringComparison.Ordinal);
        Assert.False(LabMethodsJson.TryRead(json.Replace(what, by, StringComparison.Ordinal), out _, out var faults));
        Assert.Contains(faults, f => f.Contains(said, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void Faults_OfInstruments_SayWhatIsMissing()
    {
        Assert.Contains("stands twice", Assert.Single(new LabInstruments([Nir, Nir with { Code = "nir-2" }]).Faults()), StringComparison.Ordinal);
        Assert.Contains("go together", Assert.Single((Nir with { CheckEveryHours = null }).Faults()), StringComparison.Ordinal);
        Assert.Contains("name the methods", Assert.Single((Nir with { Methods = [] }).Faults()), StringComparison.Ordinal);
        Assert.Contains("slope is above 0", Assert.Single((Nir with { Calibrations = [Set(3, 0)] }).Faults()), StringComparison.Ordinal);
        Assert.Contains("begin on one day", Assert.Single((Nir with { Calibrations = [Set(3, 1), Set(3, 1)] }).Faults()), StringComparison.Ordinal);
    }

    [Fact]
    public void CalibrationOn_ADay_IsTheNewestByThen()
    {
        var nir = Nir with { Calibrations = [Set(3, 1), Set(9, 1.02m)] };
        Assert.Null(nir.CalibrationOn(Property.Protein, new LocalDate(2025, 9, 2)));
        Assert.Equal(1m, nir.CalibrationOn(Property.Protein, new LocalDate(2025, 9, 8))!.Slope);
        Assert.Equal(1.02m, nir.CalibrationOn(Property.Protein, new LocalDate(2025, 9, 9))!.Slope);
    }

    [Fact] // The rule is this program's own: every property's newest check must pass and be good still.
    public void Standing_ByItsChecks_IsInCheckOverdueOrOut()
    {
        InstrumentStanding At(int hour, params InstrumentCheck[] checks) => InstrumentStanding.Of(Nir, checks, Hour(hour));
        Assert.Equal(InstrumentState.Overdue, At(1).State);
        Assert.Equal((InstrumentState.InCheck, Hour(24)), (At(1, Check(0, 12.2m)).State, At(1, Check(0, 12.2m)).Due)); // On the tolerance of 0.2.
        Assert.Equal(InstrumentState.InCheck, At(24, Check(0, 12.0m)).State);
        Assert.Equal(InstrumentState.Overdue, At(25, Check(0, 12.0m)).State);
        Assert.Equal(InstrumentState.Out, At(1, Check(0, 12.21m)).State);
        Assert.Equal(InstrumentState.Out, At(99, Check(0, 12.21m)).State);
        Assert.Equal(InstrumentState.InCheck, At(3, Check(2, 12.1m), Check(0, 12.3m)).State);
        Assert.Equal(InstrumentState.Overdue, At(1, Check(2, 12.1m)).State); // A later check does not count.
        Assert.Equal(InstrumentState.InCheck, At(1, Check(0, 12.3m) with { Instrument = "NIR-1" }, Check(0, 12m) with { Instrument = "nir-2" }).State);
        Assert.Equal(InstrumentState.Unchecked, InstrumentStanding.Of(Nir with { CheckEveryHours = null, Tolerances = [] }, [], Hour(1)).State);
    }

    [Fact]
    public void Faults_OfACheck_AreSaid()
    {
        Assert.Empty(Check(0, 12m).Faults());
        Assert.Contains("1 to 20 readings", Assert.Single((Check(0, 12m) with { Found = [] }).Faults()), StringComparison.Ordinal);
        Assert.Contains("cannot be", Assert.Single(Check(0, 120m).Faults()), StringComparison.Ordinal);
        Assert.Contains("which check sample", Assert.Single((Check(0, 12m) with { Sample = " " }).Faults()), StringComparison.Ordinal);
        Assert.True(InstrumentCheck.TryRead(Check(0, 12m).ToJson(), out var read, out _));
        Assert.Equal(Check(0, 12m).ToJson(), read.ToJson());
    }

    private static LabInstrument Nir { get; } = new("NIR-2", ["NIR"], 24, [new(Property.Protein, 0.2m, FigureMark.Ours, "test")], []);

    private static InstrumentCalibration Set(int day, decimal slope) => new(new LocalDate(2025, 9, day), Property.Protein, slope, 0, "Ada");

    private static InstrumentCheck Check(int hour, decimal found) => new("NIR-2", Hour(hour), Property.Protein, 12.0m, [found], "CS-1");

    private static Instant Hour(int hour) => Instant.FromUtc(2025, 9, 1, 0, 0) + Duration.FromHours(hour);
}
