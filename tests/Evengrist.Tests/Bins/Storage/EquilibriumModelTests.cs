using CsCheck;
using Evengrist.Bins.Storage;
using Evengrist.Tests.Architecture;

namespace Evengrist.Tests.Bins.Storage;

/// <summary>The equations against the tables of docs/model/equilibrium-moisture.md. The tables were reckoned apart from this code, with constants from memory: agreement shows arithmetic, not the constants.</summary>
public sealed class EquilibriumModelTests
{
    private static readonly double[] Humidities = [0.40, 0.50, 0.60, 0.65, 0.70, 0.75, 0.80];

    public static TheoryData<string, EmcForm, double, double[]> Table => new()
    {
        { "hard", EmcForm.Henderson, 5, [11.67, 13.12, 14.58, 15.33, 16.13, 16.98, 17.92] },
        { "hard", EmcForm.Henderson, 15, [11.00, 12.38, 13.77, 14.49, 15.25, 16.06, 16.96] },
        { "hard", EmcForm.Henderson, 25, [10.45, 11.77, 13.09, 13.79, 14.52, 15.30, 16.16] },
        { "soft", EmcForm.Henderson, 5, [10.88, 12.09, 13.30, 13.93, 14.59, 15.29, 16.06] },
        { "soft", EmcForm.Henderson, 15, [10.38, 11.54, 12.71, 13.31, 13.94, 14.62, 15.36] },
        { "soft", EmcForm.Henderson, 25, [9.96, 11.08, 12.20, 12.78, 13.39, 14.05, 14.77] },
        { "durum", EmcForm.Henderson, 15, [10.52, 11.89, 13.28, 14.01, 14.77, 15.59, 16.50] },
        { "durum", EmcForm.Henderson, 25, [10.06, 11.38, 12.72, 13.41, 14.15, 14.94, 15.82] },
        { "hard", EmcForm.ChungPfost, 15, [10.97, 12.21, 13.52, 14.24, 15.02, 15.90, 16.90] },
        { "hard", EmcForm.ChungPfost, 25, [10.33, 11.59, 12.92, 13.65, 14.44, 15.33, 16.35] },
        { "soft", EmcForm.ChungPfost, 15, [10.44, 11.37, 12.38, 12.93, 13.53, 14.21, 14.99] },
        { "soft", EmcForm.ChungPfost, 25, [9.82, 10.77, 11.79, 12.35, 12.96, 13.64, 14.44] },
        { "hard red spring", EmcForm.ChungPfost, 15, [10.48, 11.90, 13.40, 14.21, 15.10, 16.08, 17.22] },
        { "hard red spring", EmcForm.ChungPfost, 25, [10.02, 11.45, 12.97, 13.79, 14.69, 15.68, 16.83] },
        { "durum", EmcForm.Oswin, 25, [9.33, 10.54, 11.89, 12.65, 13.52, 14.53, 15.76] },
    };

    [Theory]
    [MemberData(nameof(Table))]
    public void Of_EveryRowOfTheTable_IsReproducedBothWays(string wheat, EmcForm form, double celsius, double[] moistures)
    {
        foreach (var (humidity, moisture) in Humidities.Zip(moistures))
        {
            Assert.Equal(moisture, Moisture(wheat, form, celsius, humidity), 0.005001);
            Assert.Equal(humidity, Humidity(wheat, form, celsius, moisture), 0.0006);
        }
    }

    [Fact]
    public void Of_SinglePoints_AreReproduced()
    {
        Assert.Equal(13.79, Moisture("hard", EmcForm.Henderson, 25, 0.65), 0.005001);
        Assert.Equal(10.78, Moisture("soft", EmcForm.Henderson, (90 - 32) / 1.8, 0.50), 0.005001);
        Assert.Equal(0.637, Humidity("hard red spring", EmcForm.ChungPfost, 15, 14), 0.0005);
        Assert.Equal([0.545, 0.593, 0.616, 0.665],
            new[] { (13, 15), (13, 25), (14, 15), (14, 25) }.Select(p => Humidity("hard", EmcForm.Henderson, p.Item2, p.Item1)), (a, b) => Math.Abs(a - b) < 0.0005);
    }

    // Read: soft red winter, 90 °F, 50 %, about 10.8 % (wheat drying chapter, table 6); 50 °F, 75 %, 14.5 % (a farm's page on grain storage, class not stated);
    // 65 %: 13.0 % at 75 to 80 °F, 13.2 % at 60 °F, 14.1 % at 30 °F (an answer on the web, class not stated).
    [Theory]
    [InlineData(90, 0.50, 10.8)]
    [InlineData(50, 0.75, 14.5)]
    [InlineData(77.5, 0.65, 13.0)]
    [InlineData(60, 0.65, 13.2)]
    [InlineData(30, 0.65, 14.1)]
    public void Of_SoftAtReadPoints_LiesWithinSevenTenths(double fahrenheit, double humidity, double read)
    {
        Assert.Equal(read, Moisture("soft", EmcForm.Henderson, (fahrenheit - 32) / 1.8, humidity), 0.7);
        Assert.Equal(read, Moisture("soft", EmcForm.ChungPfost, (fahrenheit - 32) / 1.8, humidity), 0.7);
    }

    [Fact]
    public void Of_HalseyForWheat_IsRefusedAndNothingIsMadeUp()
    {
        var refused = Assert.IsType<NoEquilibrium>(EquilibriumModel.Of(new EquilibriumSpec("hard", EmcForm.Halsey, 20) { Humidity = 0.6 }, EmcTable.Start));
        Assert.Contains("none are made up", refused.Reason, StringComparison.Ordinal);
        Assert.Contains("modified Henderson or modified Chung-Pfost", refused.Reason, StringComparison.Ordinal);
        Assert.Contains("hard red spring", Assert.IsType<NoEquilibrium>(EquilibriumModel.Of(new EquilibriumSpec("oats", EmcForm.Henderson, 20) { Humidity = 0.6 }, EmcTable.Start)).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_HalseyWithConstantsOfOnesOwn_GoesBothWays()
    {
        // By hand: A 5, B −0.01, C 2.5 at 20 °C: exp(4.8)/−ln 0.6 = 121.51/0.510826 = 237.87, to the 1/2.5: 8.9235 % dry.
        var own = new EmcConstants("own", EmcForm.Halsey, 5, -0.01, 2.5, ConstantMark.Unverified, "by hand");
        Assert.Equal(8.9235, EquilibriumModel.PercentDry(own, 20, 0.6), 0.0002);
        Assert.Equal(0.6, EquilibriumModel.Humidity(own, 20, EquilibriumModel.PercentDry(own, 20, 0.6)), 1e-9);
    }

    [Fact]
    public void Of_MarksAndRange_GoWithTheAnswer()
    {
        Equilibrium Of(string wheat, EmcForm form, double celsius, double humidity) =>
            Assert.IsType<Equilibrium>(EquilibriumModel.Of(new EquilibriumSpec(wheat, form, celsius) { Humidity = humidity }, EmcTable.Start));
        Assert.StartsWith("Constants not verified", Assert.Single(Of("hard", EmcForm.Henderson, 20, 0.6).Notes), StringComparison.Ordinal);
        Assert.StartsWith("Constants checked roughly", Of("soft", EmcForm.Henderson, 20, 0.6).Notes[0], StringComparison.Ordinal);
        Assert.StartsWith("Constants read, not checked", Of("hard red spring", EmcForm.ChungPfost, 20, 0.6).Notes[0], StringComparison.Ordinal);
        Assert.Contains("10 to 45 °C and 20 to 90 %", Of("hard", EmcForm.Henderson, 5, 0.6).Notes[1], StringComparison.Ordinal);
        Assert.Equal(2, Of("hard", EmcForm.Henderson, 20, 0.95).Notes.Count);
    }

    [Theory]
    [InlineData(20, 1.2, null)]
    [InlineData(20, 0.0, null)]
    [InlineData(20, null, 0.0)]
    [InlineData(20, null, null)]
    [InlineData(20, 0.6, 13.0)]
    [InlineData(99, 0.6, null)]
    [InlineData(double.NaN, 0.6, null)]
    public void Of_QuestionThatCannotBe_IsRefused(double celsius, double? humidity, double? moisture) =>
        Assert.IsType<NoEquilibrium>(EquilibriumModel.Of(new EquilibriumSpec("hard", EmcForm.Henderson, celsius) { Humidity = humidity, MoisturePercent = moisture }, EmcTable.Start));

    [Fact]
    public void Of_EveryEquation_RisesWithHumidityFallsWithWarmthAndGoesThereAndBack() =>
        Gen.Select(Gen.Int[0, EmcTable.Start.Constants.Count - 1], Gen.Double[0, 45], Gen.Double[0.2, 0.85]).Sample((row, celsius, humidity) =>
        {
            var constants = EmcTable.Start.Constants[row];
            var dry = EquilibriumModel.PercentDry(constants, celsius, humidity);
            Assert.True(EquilibriumModel.PercentDry(constants, celsius, humidity + 0.05) > dry);
            Assert.True(EquilibriumModel.PercentDry(constants, celsius + 5, humidity) < dry);
            Assert.Equal(humidity, EquilibriumModel.Humidity(constants, celsius, dry), 1e-9);
        });

    [Fact]
    public void Json_TableOfTheProgram_ComesBackTheSame()
    {
        var json = EmcJson.Write(EmcTable.Start);
        Assert.True(EmcJson.TryRead(json, out var read, out var faults), string.Join(" ", faults));
        Assert.Equal(EmcTable.Start.Constants, read.Constants);
        Assert.Equal(EmcTable.Start.Classes.OrderBy(c => c.Key), read.Classes.OrderBy(c => c.Key));
        Assert.Equal("soft", read.OfClass("sw")!.Wheat);
        Assert.Null(read.OfClass("oats"));
    }

    [Theory]
    [InlineData("\"Unverified\"", "\"None\"", "how far")]
    [InlineData("\"hard red spring\"", "\"\"", "name their wheat")]
    [InlineData("2.3007E-05", "-1", "above 0")]
    [InlineData("\"durum\",\n      \"form\": \"Oswin\"", "\"durum\",\n      \"form\": \"Henderson\"", "stands twice")]
    [InlineData("\"DU\": \"durum\"", "\"DU\": \"rye\"", "no such wheat")]
    [InlineData("\"constants\"", "\"konstants\"", "konstants")]
    public void Json_TableWithAFault_IsRefusedWithWords(string old, string other, string said)
    {
        var json = EmcJson.Write(EmcTable.Start);
        Assert.Contains(old, json, StringComparison.Ordinal);
        Assert.False(EmcJson.TryRead(json.Replace(old, other, StringComparison.Ordinal), out _, out var faults));
        Assert.Contains(faults, f => f.Contains(said, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("2.3007E-05", "1e99", "would come to 0 %")]
    [InlineData("0.17609", "1e-300", "would come to more than 100 %")]
    [InlineData("55.815", "-60", "would come to NaN %")]
    public void Json_ConstantsThatWheatCannotHave_AreRefusedWithWhatTheyGive(string old, string other, string said)
    {
        Assert.False(EmcJson.TryRead(EmcJson.Write(EmcTable.Start).Replace(old, other, StringComparison.Ordinal), out _, out var faults));
        Assert.Contains(said, Assert.Single(faults), StringComparison.Ordinal);
    }

    [Fact]
    public void Page_EquilibriumMoisture_HoldsEveryRow()
    {
        var page = Repository.Text("docs/model/equilibrium-moisture.md");
        foreach (var row in Table)
        {
            var (wheat, form, celsius, moistures) = ((string)row[0], (EmcForm)row[1], (double)row[2], (double[])row[3]);
            Assert.Contains(FormattableString.Invariant($"| {form.Words()} | {wheat} | {celsius} | {string.Join(" | ", moistures.Select(m => m.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture)))} |"), page, StringComparison.Ordinal);
        }

        Assert.All(EmcTable.Start.Constants, c => Assert.Contains($"| {c.Wheat} | {c.Form.Words()} |", page, StringComparison.Ordinal));
    }

    private static double Moisture(string wheat, EmcForm form, double celsius, double humidity) =>
        Assert.IsType<Equilibrium>(EquilibriumModel.Of(new EquilibriumSpec(wheat, form, celsius) { Humidity = humidity }, EmcTable.Start)).MoisturePercent;

    private static double Humidity(string wheat, EmcForm form, double celsius, double moisture) =>
        Assert.IsType<Equilibrium>(EquilibriumModel.Of(new EquilibriumSpec(wheat, form, celsius) { MoisturePercent = moisture }, EmcTable.Start)).Humidity;
}
