namespace Evengrist.Intake.Sampling;

/// <summary>Spreads points over the plan of a vehicle. Ours: only the numbers come from the rules.</summary>
internal static class PointsOn
{
    // About 2 ft from the sides, or a fifth of a narrow vehicle.
    private const double Inset = 0.6096;

    // Roots of x³ = x + 1: the plane is filled evenly by steps of 1/x and 1/x² (the golden ratio in two dimensions).
    private const double StepAlong = 0.7548776662466927;
    private const double StepAcross = 0.5698402909980532;

    /// <summary>Probes over all hoppers: 5 for one, 6 for two or three, 7 for more, and never fewer than the hoppers.</summary>
    public static int HopperProbes(int hoppers) => hoppers switch { 1 => 5, <= 3 => 6, _ => 7 };

    public static IReadOnlyList<ProbePoint> Plan(ProbeSpec spec, int count)
    {
        var places = spec.Pattern.Spread switch
        {
            PointSpread.Columns => Columns(spec, count),
            PointSpread.Hoppers => InHoppers(spec, count),
            PointSpread.Scatter => Scatter(spec, count),
            _ => [],
        };
        return [.. places.Select((p, i) => new ProbePoint(i + 1, p.Along, p.Across))];
    }

    private static double InsetOf(double width) => Math.Min(Inset, width / 5);

    // 7 stand as 2-3-2 and 9 as 3-3-3; 5, 8 and 11 as 2-1-2, 2-1-2-1-2, 2-1-2-1-2-1-2.
    private static IEnumerable<(double Along, double Across)> Columns(ProbeSpec spec, int count)
    {
        int[] columns = count switch
        {
            7 => [2, 3, 2],
            9 => [3, 3, 3],
            _ => [.. Enumerable.Range(0, 2 * (count - 2) / 3 + 1).Select(i => i % 2 == 0 ? 2 : 1)],
        };
        var (inset, along) = (InsetOf(spec.WidthMetres), InsetOf(spec.LengthMetres));
        for (var c = 0; c < columns.Length; c++)
        {
            for (var r = 0; r < columns[c]; r++)
            {
                yield return (along + (spec.LengthMetres - 2 * along) * c / (columns.Length - 1),
                    columns[c] == 1 ? spec.WidthMetres / 2 : inset + (spec.WidthMetres - 2 * inset) * r / (columns[c] - 1));
            }
        }
    }

    private static IEnumerable<(double Along, double Across)> InHoppers(ProbeSpec spec, int count)
    {
        var length = spec.LengthMetres / spec.Hoppers;
        (double Along, double Across)[] offsets = [(0, 0), (-1, -1), (1, 1), (-1, 1), (1, -1)];
        for (var h = 0; h < spec.Hoppers; h++)
        {
            var here = count / spec.Hoppers + (h < count % spec.Hoppers ? 1 : 0);
            for (var i = 0; i < here; i++)
            {
                var (along, across) = offsets[i];
                // Every other hopper is mirrored, so that the off-centre probes change sides.
                yield return ((h + 0.5 + 0.25 * along) * length, spec.WidthMetres * (0.5 + 0.25 * (h % 2 == 0 ? across : -across)));
            }
        }
    }

    private static IEnumerable<(double Along, double Across)> Scatter(ProbeSpec spec, int count)
    {
        var (along, across) = (InsetOf(spec.LengthMetres), InsetOf(spec.WidthMetres));
        for (var i = 1; i <= count; i++)
        {
            var n = i + (spec.Seed & 0xFFFF) * 7.0;
            yield return (along + (spec.LengthMetres - 2 * along) * (StepAlong * n % 1), across + (spec.WidthMetres - 2 * across) * (StepAcross * n % 1));
        }
    }
}
