using Evengrist.Ledger;
using Evengrist.Mix;
using Evengrist.Mix.Sheets;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tests.Mix;

public sealed class MixSheetTests
{
    private static string Fault(MixSheet sheet) => Assert.Single(MixSheetCheck.Faults(sheet));

    private static IReadOnlyList<string> Against(MixSheet sheet, params (string, MixSheet)[] others) => MixSheetCheck.Against("MXA new", sheet, ["B05", "B06"], ["MXA", "MXB"], others, at => at.ToString());

    [Fact]
    public void Faults_OfAGoodSheet_AreNone()
    {
        Assert.Empty(MixSheetCheck.Faults(Sheets.WithExpected));
        Assert.Empty(Against(Sheets.Usual));
    }

    [Fact]
    public void Faults_EachSaysWhatToDo()
    {
        var usual = Sheets.Usual;
        Assert.Contains("add up to 95 %, not to 100 %", Fault(usual with { Gates = [usual.Gates[0], usual.Gates[1] with { SharePercent = 55 }] }), StringComparison.Ordinal);
        Assert.Contains("share of B05 lies above 0", string.Join(" ", MixSheetCheck.Faults(usual with { Gates = [usual.Gates[0] with { SharePercent = -10 }, usual.Gates[1] with { SharePercent = 110 }] })), StringComparison.Ordinal);
        Assert.Contains("ends before it begins", Fault(usual with { Until = usual.From }), StringComparison.Ordinal);
        Assert.Contains("at most 31 days", Fault(usual with { Until = usual.From + Duration.FromDays(40) }), StringComparison.Ordinal);
        Assert.Contains("No gate is open", Fault(usual with { Gates = [] }), StringComparison.Ordinal);
        Assert.Contains("stands there 2 times", Fault(usual with { Gates = [usual.Gates[0] with { SharePercent = 50 }, usual.Gates[0] with { SharePercent = 50 }] }), StringComparison.Ordinal);
        Assert.Contains("got 0", Fault(usual with { TonnesPerHour = 0 }), StringComparison.Ordinal);
        Assert.Contains("got NaN", Fault(usual with { TonnesPerHour = double.NaN }), StringComparison.Ordinal);
        Assert.Contains("who set the mix", Fault(usual with { SetBy = " " }), StringComparison.Ordinal);
    }

    [Fact]
    public void Faults_OffTheBestMix_WantsAReason()
    {
        var best = Sheets.Usual with { Best = new Dictionary<string, double> { ["B05"] = 45, ["B06"] = 55 } };
        Assert.Contains("say why", Fault(best), StringComparison.Ordinal);
        Assert.Empty(MixSheetCheck.Faults(best with { Reason = "B05 is to be emptied for the fumigation" }));
        Assert.Empty(MixSheetCheck.Faults(best with { Best = new Dictionary<string, double> { ["B05"] = 40.04, ["b06"] = 59.96 } }));
        Assert.Contains("say why", Fault(best with { Best = new Dictionary<string, double> { ["B05"] = 40, ["B06"] = 50, ["B09"] = 10 } }), StringComparison.Ordinal);
    }

    [Fact]
    public void Against_UnknownNamesAndOverlaps_AreRefused()
    {
        var usual = Sheets.Usual;
        Assert.Contains("no bin B77", Assert.Single(Against(usual with { Gates = [usual.Gates[0] with { Bin = "B77" }, usual.Gates[1]] })), StringComparison.Ordinal);
        Assert.Contains("no mix line MXC: there is MXA, MXB", Assert.Single(Against(usual with { Line = "MXC" })), StringComparison.Ordinal);
        var later = usual with { From = usual.From + Duration.FromHours(12), Until = usual.Until + Duration.FromHours(12) };
        Assert.Contains("MXA has a sheet for that time: MXA old", Assert.Single(Against(later, ("MXA old", usual))), StringComparison.Ordinal);
        Assert.Empty(Against(later, ("MXA new", usual))); // a version of itself
        Assert.Empty(Against(later with { Line = "MXB" }, ("MXA old", usual)));
        Assert.Empty(Against(later, ("MXA old", usual with { Withdrawn = "set in error" })));
        Assert.Empty(Against(usual with { From = usual.Until, Until = usual.Until + Duration.FromHours(2) }, ("MXA old", usual)));
    }

    [Fact]
    public void Json_ThereAndBack_LosesNothing()
    {
        var sheet = Sheets.WithExpected with
        {
            Best = new Dictionary<string, double> { ["B05"] = 40, ["B06"] = 60 }, CostToday = 240.1, Currency = "USD", StepPercent = 1, LeftOut = [new("B04", "on hold")], Remarks = ["one"],
            Limits = [new(Property.Protein, LimitOn.Wheat, Basis.At12, "the mill's terms") { Least = 13.1 }],
        };
        Assert.True(MixSheetJson.TryRead(MixSheetJson.Write(sheet), out var back, out var faults), string.Join(" ", faults));
        Assert.Equal(MixSheetJson.Write(sheet), MixSheetJson.Write(back));
        Assert.Equal(13.36, back.Expected.Single(e => e.What == Property.Protein).Value, 9);
    }

    [Theory]
    [InlineData("{", "JSON")]
    [InlineData("null", "read null")]
    [InlineData("""{"line":"MXA"}""", "missing")]
    [InlineData("""{"line":"MXA","flour":"WB","from":"yesterday","until":"2026-01-14T12:00:00Z","tonnesPerHour":1,"setBy":"x","gates":[]}""", "2026-01-14T12:00:00Z")]
    [InlineData("""{"line":"MXA","flour":"WB","from":"2026-01-13T12:00:00Z","until":"2026-01-14T12:00:00Z","tonnesPerHour":1,"setBy":"x","gates":[null]}""", "read null")]
    public void Json_ThatIsNoSheet_IsRefusedInWords(string json, string says)
    {
        Assert.False(MixSheetJson.TryRead(json, out _, out var faults));
        Assert.Contains(says, string.Join(" ", faults), StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>40 % of 75.9 and 60 % of 79.0 kg/hL: 100/(40/75.9 + 60/79.0), by hand, as a bin reckons it too.</summary>
    [Fact]
    public void ExpectedOfGates_TestWeight_IsMassOverVolumeAsInABin()
    {
        var weight = Sheets.Usual.ExpectedOfGates().Single(e => e.What == Property.TestWeight).Value;
        Assert.Equal(100 / ((40 / 75.9) + (60 / 79.0)), weight, 10);
        Assert.Equal(TestWeightBlend.Of([(40, 75.9), (60, 79.0)])!.Value, weight, 10);
    }

}
