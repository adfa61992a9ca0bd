using CsCheck;
using Evengrist.Intake;
using NodaTime;

namespace Evengrist.Tests.Intake;

public sealed class TermsJsonTests
{
    private static readonly ContractTerms Full = Loads.HardWinter with
    {
        Name = "Northern \"growers\" – é",
        From = new LocalDate(2025, 7, 1),
        Scales =
        [
            ReferenceScales.KansasCityHardWinter with { Cap = 0.5m, Floor = -0.02m, From = new LocalDate(2025, 7, 1), Until = new LocalDate(2026, 6, 30), RejectAbove = 18m },
            ReferenceScales.SpringQuarters with { Rounding = StepRounding.Nearest },
        ],
    };

    [Fact]
    public void Write_ReadBack_LosesNothing()
    {
        var json = TermsJson.Write(Full);
        Assert.True(TermsJson.TryRead(json, out var back, out _));
        Assert.Equal(json, TermsJson.Write(back));
        Assert.Equal(Full with { Scales = [] }, back with { Scales = [] });
        Assert.Equal(Full.Scales.Select(s => s with { Steps = [], Tiers = null }), back.Scales.Select(s => s with { Steps = [], Tiers = null }));
        Assert.Equal(Full.Scales.SelectMany(s => s.Table), back.Scales.SelectMany(s => s.Table));
        Assert.Equal(decimal.GetBits(6.20m), decimal.GetBits(back.Base.Money.Amount));
    }

    [Theory]
    [InlineData("", "")]
    [InlineData("null", "object")]
    [InlineData("[]", "")]
    [InlineData("{}", "must be there and is missing")]
    public void TryRead_NotTerms_Refused(string json, string reason) => Refused(json, reason);

    [Theory]
    [InlineData("\"version\": 1", "\"version\": 0", "version from 1")]
    [InlineData("\"baseMoisture\": 13.5", "\"baseMoisture\": 130", "Moisture is a number")]
    [InlineData("\"basis\": \"12mb\"", "\"basis\": \"wet\"", "A basis is dry")]
    [InlineData("\"basis\": \"12mb\"", "\"basis\": \"none\"", "needs a moisture basis")]
    [InlineData("\"currency\": \"USD\"", "\"currency\": \"dollars\"", "not a currency")]
    [InlineData("\"from\": \"2025-07-01\"", "\"from\": \"1 July\"", "A date is written")]
    [InlineData("\"durum\": false", "\"durum\": false, \"durum\": true", "stands twice")]
    [InlineData("\"durum\": false", "\"duram\": false", "duram")]
    [InlineData("\"amount\": 6.20", "\"amount\": -6.20", "base price lies above 0")]
    [InlineData("\"amount\": 6.20", "\"amount\": 1e300", "")]
    [InlineData("\"scales\": [", "\"scales\": [null,", "read null")]
    [InlineData("\"factor\": \"Protein\"", "\"factor\": \"Colour\"", "factor")]
    [InlineData("\"factor\": \"Protein\"", "\"factor\": 2", "factor")]
    public void TryRead_OneThingBroken_SaysWhich(string right, string wrong, string reason)
    {
        var json = TermsJson.Write(Full);
        Assert.Contains(right, json, StringComparison.Ordinal);
        var at = json.IndexOf(right, StringComparison.Ordinal);
        Refused(string.Concat(json.AsSpan(0, at), wrong, json.AsSpan(at + right.Length)), reason);
    }

    // Whatever stands in a kept or sent contract: it is read or refused, and what was read settles a load or says why not.
    [Fact]
    public void TryRead_TermsWithAnythingInThem_NeverThrows()
    {
        var lines = TermsJson.Write(Full).Split('\n');
        string[] values = ["null", "\"\"", "0", "-1", "1e28", "79228162514264337593543950335", "1e-28", "[]", "{}", "true", "\"Nearest\"", "\"PerStep\"", "\"Moisture\"", "\"9999-12-31\"", "\"99.999mb\""];
        Gen.Select(Gen.Int[0, lines.Length - 1], Gen.Int[0, values.Length - 1], Gen.Int[0, lines.Length - 1], Gen.Int[0, values.Length - 1]).Sample((line, value, line2, value2) =>
        {
            var broken = lines.ToArray();
            Put(broken, line, values[value]);
            Put(broken, line2, values[value2]);
            if (TermsJson.TryRead(string.Join('\n', broken), out var terms, out var faults))
            {
                Assert.NotNull(SettlementModel.Settle(Loads.Of(38_460m, 12_120m, Loads.Dockage, Loads.Moist, Loads.Protein), terms));
            }
            else
            {
                Assert.NotEmpty(faults);
            }
        }, iter: 3000);
    }

    private static void Put(string[] lines, int at, string value)
    {
        var colon = lines[at].IndexOf(": ", StringComparison.Ordinal);
        if (colon >= 0)
        {
            lines[at] = lines[at][..(colon + 2)] + value + (lines[at].TrimEnd().EndsWith(',') ? "," : "");
        }
    }

    private static void Refused(string json, string reason)
    {
        Assert.False(TermsJson.TryRead(json, out var terms, out var faults));
        Assert.Null(terms);
        Assert.Contains(reason, string.Join(" ", faults), StringComparison.Ordinal);
    }
}
