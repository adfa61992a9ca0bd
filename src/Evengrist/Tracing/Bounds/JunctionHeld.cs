namespace Evengrist.Tracing.Bounds;

/// <summary>Blends at once what flows through it; what it holds itself is a rounding, or else counts as a store.</summary>
internal sealed class JunctionHeld(double clean) : Held
{
    private const double Rounding = 1e-3;
    private Batch left = Batch.Clean(clean);

    public override Batch All => left;

    protected override void Pass(in Batch into, ReadOnlySpan<double> draws, Span<Batch> outs, double cap)
    {
        var drawn = Sum(draws);
        if (left.Grams > Rounding * into.Grams && left.Grams > 1)
        {
            var all = left.Beside(into, cap);
            for (var i = 0; i < draws.Length; i++)
            {
                outs[i] = all.Part(draws[i]);
            }

            left = all.Part(Math.Max(0, all.Grams - drawn));
            return;
        }

        var mixed = left.Blended(into, cap);
        for (var i = 0; i < draws.Length; i++)
        {
            outs[i] = mixed.Grams > 0 ? mixed.Share(draws[i] / mixed.Grams) : Batch.Clean(draws[i]);
        }

        left = mixed.Grams > 0 ? mixed.Share(Math.Max(0, 1 - drawn / mixed.Grams)) : mixed;
    }
}
