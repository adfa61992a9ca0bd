using System.Text.Json.Serialization;

namespace Evengrist.Bins.Shape;

/// <summary>The inner shape of a bin and how grain lies in it. Metres, degrees from the horizontal.</summary>
/// <remarks>
/// Either a diameter, or a length and a width. The floor is flat, or a hopper on all sides. A pile in a rectangular bin is taken as hipped, its wall line level all round.
/// Angles of repose: piling 25° [a farmers' forum, weak]; emptying about 27° [memory]. Model: docs/model/bin-shape.md.
/// </remarks>
public sealed record BinShape
{
    private const double UsualHeap = 25, UsualDrawn = 27;

    /// <summary>Inner diameter of a round bin, m, 0.5 to 60; null for a rectangular one.</summary>
    public double? DiameterMetres { get; init; }

    /// <summary>Inner length of a rectangular bin, m, 0.5 to 100; null for a round one.</summary>
    public double? LengthMetres { get; init; }

    /// <summary>Inner width of a rectangular bin, m, 0.5 to 100; null for a round one.</summary>
    public double? WidthMetres { get; init; }

    /// <summary>Height of the straight wall from the floor (or the upper edge of the hopper) to the eave, m, 0.5 to 80.</summary>
    public required double WallMetres { get; init; }

    /// <summary>Slope of the hopper, degrees, 5 to 85; null for a flat floor.</summary>
    public double? HopperDegrees { get; init; }

    /// <summary>Diameter (round) or width (rectangular) of the outlet, m; with a hopper only.</summary>
    public double? OutletMetres { get; init; }

    /// <summary>Angle of repose of a heap, degrees, 0 to 45.</summary>
    public double HeapDegrees { get; init; } = UsualHeap;

    /// <summary>Angle of repose of a drawn-down cone, degrees, 0 to 45.</summary>
    public double DrawnDegrees { get; init; } = UsualDrawn;

    /// <summary>One standard uncertainty of either angle, degrees; 3 [design].</summary>
    public double ReposeUncertaintyDegrees { get; init; } = 3;

    /// <summary>Where the measures come from, in words; may be empty.</summary>
    public string Note { get; init; } = "";

    /// <summary>Whether the plan is a circle.</summary>
    [JsonIgnore]
    public bool IsRound => DiameterMetres is not null;

    internal CrossSection Section => DiameterMetres is { } diameter ? CrossSection.Round(diameter) : CrossSection.Rectangle(LengthMetres!.Value, WidthMetres!.Value);

    /// <summary>Tangent of the hopper's slope; 0 for a flat floor.</summary>
    internal double HopperSlope => HopperDegrees is { } degrees ? Slope(degrees) : 0;

    /// <summary>Distance from the wall to the edge of the outlet, m; the middle for a flat floor.</summary>
    internal double OutletDistance => Section.InradiusMetres - (HopperDegrees is null ? 0 : OutletMetres!.Value / 2);

    /// <summary>Depth of the hopper, m; 0 for a flat floor.</summary>
    [JsonIgnore]
    public double HopperMetres => HopperSlope * OutletDistance;

    /// <summary>The angle at which the top is taken to lie, with its ± (k = 2) and where it comes from; that it is level, where it is.</summary>
    /// <param name="surface">How the top lay.</param>
    public string ReposeWords(Surface surface) => surface == Surface.Level ? "level: no angle of repose" : FormattableString.Invariant(
        $"angle of repose {(surface == Surface.Heaped ? HeapDegrees : DrawnDegrees):0.#}° ± {2 * ReposeUncertaintyDegrees:0.#}°, {(surface, HeapDegrees, DrawnDegrees) switch
        {
            (Surface.Heaped, UsualHeap, _) => "from a weak source (a forum)",
            (Surface.DrawnDown, _, UsualDrawn) => "from memory",
            _ => "as kept for the bin",
        }}");

    /// <summary>What is wrong with the measures, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() => [.. Check()];

    /// <summary>The slope of the surface inwards: up for a heap, down for a drawn-down cone.</summary>
    internal double InwardSlope(Surface surface, double moreDegrees = 0) => surface switch
    {
        Surface.Heaped => Slope(Math.Max(0, HeapDegrees + moreDegrees)),
        Surface.DrawnDown => -Slope(Math.Max(0, DrawnDegrees + moreDegrees)),
        _ => 0,
    };

    private static double Slope(double degrees) => Math.Tan(degrees * Math.PI / 180);

    private IEnumerable<string> Check()
    {
        if (DiameterMetres is null == (LengthMetres is null || WidthMetres is null) || (DiameterMetres is not null && (LengthMetres ?? WidthMetres) is not null))
        {
            yield return "Give either the diameter of a round bin, or length and width of a rectangular one.";
            yield break;
        }

        foreach (var (what, value, least, most) in new[]
        {
            ("The diameter", DiameterMetres, 0.5, 60.0), ("The length", LengthMetres, 0.5, 100), ("The width", WidthMetres, 0.5, 100), ("The wall", WallMetres, 0.5, 80),
            ("The slope of the hopper", HopperDegrees, 5, 85), ("The angle of repose of a heap", HeapDegrees, 0, 45), ("The angle of repose of a drawn-down cone", DrawnDegrees, 0, 45),
            ("The uncertainty of the angle of repose", ReposeUncertaintyDegrees, 0, 15),
        })
        {
            if (value is { } number && !(number >= least && number <= most))
            {
                yield return FormattableString.Invariant($"{what} lies from {least} to {most}; read {number}. Metres and degrees: is the unit right?");
            }
        }

        if (HopperDegrees is null != OutletMetres is null)
        {
            yield return "A hopper has both a slope and an outlet; a flat floor has neither.";
        }
        else if (OutletMetres is { } outlet && !(outlet > 0 && outlet < 2 * Section.InradiusMetres))
        {
            yield return "The outlet is above 0 and narrower than the bin.";
        }
    }
}
