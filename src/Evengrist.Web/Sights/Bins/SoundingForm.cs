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
        var faults = new List<string>();
        var (sounding, density) = (Tape("The ullage", Ullage, Uncertainty, Surface, From, faults), Density("The test weight", TestWeight, faults));
        return sounding is null || density is null ? (null, null, new NotSounded(faults)) : (sounding, density, SoundingModel.Of(shape, sounding, density, pack));
    }

    /// <summary>A tape; null where a field of it is none, which is then said.</summary>
    internal static Sounding? Tape(string what, string? ullage, string? uncertainty, string? top, string? hung, List<string> faults)
    {
        var metres = TypedNumber.Read($"{what}, in metres from the eave down to the grain,", ullage, faults, -100, 100, demanded: true);
        var u = TypedNumber.Read($"{what}: the ± of the tape, in metres,", string.IsNullOrWhiteSpace(uncertainty) ? "0.1" : uncertainty, faults, 0, 5);
        if (!Enum.TryParse<Surface>(top, out var surface) || !Enum.IsDefined(surface) || !Enum.TryParse<SoundedFrom>(hung, out var from) || !Enum.IsDefined(from))
        {
            faults.Add($"{what}: choose how the top lay and where the tape hung.");
            return null;
        }

        return metres is null || u is null ? null : new Sounding(metres.Value, surface, from, u.Value);
    }

    /// <summary>The loose density from a test weight in kg/hL; null where it is none, which is then said.</summary>
    internal static BulkDensity? Density(string what, string? testWeight, List<string> faults) =>
        TypedNumber.Read($"{what}, in kg/hL,", testWeight, faults, 20, 100, demanded: true) is { } weight
            ? BulkDensity.Of(Quantities.TestWeight.Read((decimal)weight, TestWeightConvention.KilogramsPerHectolitre)) : null;
}
