namespace Evengrist.Tracing.Bounds;

/// <summary>One load or package: one even parcel.</summary>
internal sealed class UnitHeld(double clean) : Held
{
    private Batch all = Batch.Clean(clean);

    public override Batch All => all;

    protected override void Pass(in Batch into, ReadOnlySpan<double> draws, Span<Batch> outs, double cap)
    {
        all = all.Blended(into, cap).Even();
        var grams = all.Grams;
        for (var i = 0; i < draws.Length; i++)
        {
            outs[i] = grams > 0 ? all.Share(draws[i] / grams) : Batch.Clean(draws[i]);
        }

        all = grams > 0 ? all.Share(Math.Max(0, 1 - Sum(draws) / grams)) : all;
    }
}
