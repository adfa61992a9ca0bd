using System.Globalization;
using Evengrist.Bins.BestBin;
using Evengrist.Bins.Shape;

namespace Evengrist.Web.Sights.Bins;

/// <summary>The shape and the house band of a bin as a person typed them; nothing typed means none.</summary>
public sealed class BinPapersForm
{
    /// <summary><c>shape</c> or <c>band</c>.</summary>
    public string? Act { get; set; }

    /// <summary>m; empty for a rectangular bin.</summary>
    public string? Diameter { get; set; }

    /// <summary>m; empty for a round bin.</summary>
    public string? Length { get; set; }

    /// <summary>m; empty for a round bin.</summary>
    public string? Width { get; set; }

    /// <summary>m.</summary>
    public string? Wall { get; set; }

    /// <summary>Degrees; empty for a flat floor.</summary>
    public string? Hopper { get; set; }

    /// <summary>m; empty for a flat floor.</summary>
    public string? Outlet { get; set; }

    /// <summary>What the band is called.</summary>
    public string? Name { get; set; }

    /// <summary>Per cent at 12 % moisture.</summary>
    public string? ProteinFrom { get; set; }

    /// <summary>Per cent at 12 % moisture.</summary>
    public string? ProteinTo { get; set; }

    /// <summary>s.</summary>
    public string? FallingFrom { get; set; }

    /// <summary>s.</summary>
    public string? FallingTo { get; set; }

    /// <summary>kg/hL.</summary>
    public string? WeightFrom { get; set; }

    /// <summary>kg/hL.</summary>
    public string? WeightTo { get; set; }

    /// <summary>What is kept already, to be changed.</summary>
    public static BinPapersForm Of(BinShape? shape, BinBand? band) => new()
    {
        Diameter = Say(shape?.DiameterMetres), Length = Say(shape?.LengthMetres), Width = Say(shape?.WidthMetres), Wall = Say(shape?.WallMetres), Hopper = Say(shape?.HopperDegrees), Outlet = Say(shape?.OutletMetres),
        Name = band?.Name, ProteinFrom = Say(band?.ProteinFrom), ProteinTo = Say(band?.ProteinTo), FallingFrom = Say(band?.FallingNumberFrom), FallingTo = Say(band?.FallingNumberTo), WeightFrom = Say(band?.TestWeightFrom), WeightTo = Say(band?.TestWeightTo),
    };

    /// <summary>The shape, and what is wrong with it; what the form does not ask stays as it was kept.</summary>
    public (BinShape? Shape, IReadOnlyList<string> Faults) ReadShape(BinShape? kept)
    {
        var faults = new List<string>();
        var shape = (kept ?? new BinShape { WallMetres = 0 }) with
        {
            DiameterMetres = Number("The diameter", Diameter, faults), LengthMetres = Number("The length", Length, faults), WidthMetres = Number("The width", Width, faults),
            WallMetres = Number("The wall", Wall, faults) ?? 0, HopperDegrees = Number("The slope of the hopper", Hopper, faults), OutletMetres = Number("The outlet", Outlet, faults),
        };
        faults.AddRange(faults.Count > 0 ? [] : shape.Faults());
        return (faults.Count == 0 ? shape : null, faults);
    }

    /// <summary>The band, and what is wrong with it; what the form does not ask stays as it was kept.</summary>
    public (BinBand? Band, IReadOnlyList<string> Faults) ReadBand(BinBand? kept)
    {
        var faults = new List<string>();
        var band = (kept ?? new BinBand { ProteinFrom = 0, ProteinTo = 0 }) with
        {
            Name = (Name ?? "").Trim(), ProteinFrom = Number("Protein from", ProteinFrom, faults) ?? -1, ProteinTo = Number("Protein up to", ProteinTo, faults) ?? -1,
            FallingNumberFrom = Number("Falling number from", FallingFrom, faults), FallingNumberTo = Number("Falling number up to", FallingTo, faults),
            TestWeightFrom = Number("Test weight from", WeightFrom, faults), TestWeightTo = Number("Test weight up to", WeightTo, faults),
        };
        faults.AddRange(faults.Count > 0 ? [] : band.Faults());
        return (faults.Count == 0 ? band : null, faults);
    }

    private static double? Number(string what, string? text, List<string> faults) => TypedNumber.Read(what, text, faults);

    private static string Say(double? number) => number?.ToString("0.###", CultureInfo.InvariantCulture) ?? "";
}
