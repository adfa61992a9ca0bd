using System.Globalization;
using Evengrist.Bins.Shape;
using Evengrist.Quantities;

namespace Evengrist.Web.Sights.Bins;

/// <summary>A sounding as a person typed it.</summary>
public sealed class SoundingForm
{
    /// <summary>Made with the form, so that the same form sent twice is one sounding.</summary>
    public string? Key { get; set; }

    /// <summary>When, by the mill's clock.</summary>
    public string? At { get; set; }

    /// <summary>Metres from the eave down to the grain.</summary>
    public string? Ullage { get; set; }

    /// <summary>One standard uncertainty of it, m.</summary>
    public string? Uncertainty { get; set; }

    /// <summary><c>Heaped</c>, <c>Level</c> or <c>DrawnDown</c>.</summary>
    public string? Surface { get; set; }

    /// <summary><c>Wall</c> or <c>Centre</c>.</summary>
    public string? From { get; set; }

    /// <summary>Test weight, kg/hL.</summary>
    public string? TestWeight { get; set; }

    /// <summary><c>reckon</c>, <c>record</c> or <c>book</c>.</summary>
    public string? Act { get; set; }

    /// <summary>Why a difference is booked.</summary>
    public string? Reason { get; set; }

    /// <summary>What comes of it for a shape and a pack factor.</summary>
    public (Sounding? Sounding, BulkDensity? Density, SoundingOutcome Outcome) Reckon(BinShape shape, PackFactor pack)
    {
        var (ullage, u, weight) = (Number(Ullage), Number(string.IsNullOrWhiteSpace(Uncertainty) ? "0.1" : Uncertainty), Number(TestWeight));
        if (ullage is null || u is null || weight is null or < 20 or > 100 || !Enum.TryParse<Surface>(Surface, out var surface) || !Enum.TryParse<SoundedFrom>(From, out var from))
        {
            return (null, null, new NotSounded(["Give the ullage and its ± in metres, and a test weight from 20 to 100 kg/hL, with a point as decimal mark; choose the surface and where the tape hung."]));
        }

        var sounding = new Sounding(ullage.Value, surface, from, u.Value);
        var density = BulkDensity.Of(Quantities.TestWeight.Read((decimal)weight.Value, TestWeightConvention.KilogramsPerHectolitre));
        return (sounding, density, SoundingModel.Of(shape, sounding, density, pack));
    }

    private static double? Number(string? text) =>
        double.TryParse((text ?? "").Trim(), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) ? number : null;
}
