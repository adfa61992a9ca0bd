using Evengrist.Milling.Sheet;
using Evengrist.Milling.Stock;

namespace Evengrist.Milling.Grinding;

/// <summary>Wheat behind the rolls of first break: mass by size from the breakage function, parts by how they lean to fine or coarse, both sums kept.</summary>
public static class BrokenWheat
{
    // How each part leans: its share in a size goes as size to this power before the sums are made right [ours]: bran and what clings to it lie coarse.
    private static readonly double[] Lean = [-0.12, 0, 0.14, 0.80, 0.35];

    /// <summary>Dry matter by part and size class, part by part, of 1 of wheat.</summary>
    /// <param name="wheat">The wheat.</param>
    /// <param name="rolls">The rolls of first break.</param>
    /// <param name="classes">The size classes.</param>
    /// <param name="severity">What a release test tunes; 1 where none was made.</param>
    public static double[] Of(MillWheat wheat, RollPair rolls, SizeClasses classes, double severity)
    {
        ArgumentNullException.ThrowIfNull(wheat);
        ArgumentNullException.ThrowIfNull(rolls);
        ArgumentNullException.ThrowIfNull(classes);
        var sizes = new double[classes.Count];
        foreach (var kernel in wheat.Kernels)
        {
            var law = FirstBreakLaw.Of(rolls.Disposition, rolls.GapMicrometres / 1000, kernel.ThicknessMillimetres, kernel.Hardness, wheat.MoisturePercent, severity);
            for (var i = 0; i < sizes.Length; i++)
            {
                sizes[i] += kernel.Share * (law.Finer(classes.Upper(i) / SizeClasses.Most) - law.Finer(classes.Lower(i) / SizeClasses.Most));
            }
        }

        double[] parts = [.. wheat.Parts.Select(p => p.Share)];
        var seed = new double[parts.Length * sizes.Length];
        for (var part = 0; part < parts.Length; part++)
        {
            for (var i = 0; i < sizes.Length; i++)
            {
                seed[(part * sizes.Length) + i] = Math.Pow(classes.Middle(i) / SizeClasses.Most, Lean[part]);
            }
        }

        return MarginFit.Of(seed, parts, sizes);
    }
}
