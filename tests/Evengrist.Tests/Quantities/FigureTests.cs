using Evengrist.Quantities;

namespace Evengrist.Tests.Quantities;

public sealed class FigureTests
{
    [Fact]
    public void Seen_Reading_ShowsValueUnitBasisAndPlusMinus()
    {
        var protein = Figure.Seen("protein", 13.10m, "%", Basis.At12) with { StandardUncertainty = 0.25m };
        Assert.Equal("13.10 % 12mb ± 0.50 (seen)", protein.ToString());
        Assert.Equal(2, protein.Decimals);
    }

    [Fact]
    public void Reckoned_Net_SaysBecause()
    {
        var (gross, tare) = (Figure.Seen("gross", 38_460m, "kg"), Figure.Seen("tare", 12_120m, "kg"));
        var net = Figure.Reckoned("net", gross.Value - tare.Value, "kg", 0, new Because("gross − tare", [gross, tare], "by definition"));
        Assert.Equal("26,340 kg (reckoned)", net.ToString());
        Assert.Equal("58,070 lb", net.In(UnitSystem.UsCustomary).ToString());
        Assert.Equal(12_120m, net.Because!.Inputs[1].Value);
    }

    [Fact]
    public void PlusMinus_UsCustomary_IsScaledButNotShifted()
    {
        var temperature = Figure.Seen("temperature", 20.0m, "°C") with { StandardUncertainty = 0.5m };
        Assert.Equal("68.0 °F", temperature.In(UnitSystem.UsCustomary).ToString());
        Assert.Equal("1.8 °F", temperature.PlusMinus(UnitSystem.UsCustomary)!.ToString());
    }

    [Fact]
    public void Reckoned_WithoutBecause_Refused() =>
        Assert.Throws<ArgumentNullException>(() => Figure.Reckoned("net", 1m, "kg", 0, null!));

    [Fact]
    public void Seen_Unnamed_Refused() => Assert.Throws<ArgumentException>(() => Figure.Seen(" ", 1m, "kg"));
}
