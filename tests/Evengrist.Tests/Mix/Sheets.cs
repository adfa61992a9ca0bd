using Evengrist.Ledger;
using Evengrist.Mix.Sheets;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tests.Mix;

/// <summary>Sheets that the tests use; invented.</summary>
internal static class Sheets
{
    public static readonly Instant Begin = Instant.FromUtc(2026, 1, 12, 12, 0);

    public static MixSheet Usual { get; } = new()
    {
        Line = "MXA", Flour = "WB", From = Begin, Until = Begin + Duration.FromHours(24), TonnesPerHour = 10, SetBy = "Osric Venn",
        Gates = [Gate("B05", 40, 13.9, 75.9), Gate("B06", 60, 13.0, 79.0)],
    };

    public static SheetGate Gate(string bin, double share, double protein, double weight) => new(bin, "HW", share)
    {
        Values = [new(Property.Protein, protein, Basis.At12, 0.1), new(Property.TestWeight, weight)],
    };

    public static MixSheet WithExpected => Usual with { Expected = Usual.ExpectedOfGates() };
}
