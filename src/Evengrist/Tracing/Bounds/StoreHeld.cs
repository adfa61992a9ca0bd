namespace Evengrist.Tracing.Bounds;

/// <summary>A store: anything in it may leave next, in any proportion.</summary>
internal sealed class StoreHeld(double clean) : Held
{
    private Batch all = Batch.Clean(clean);

    public override Batch All => all;

    public override bool IsAnyOrder => true;

    protected override void Pass(in Batch into, ReadOnlySpan<double> draws, Span<Batch> outs, double cap)
    {
        all = all.Beside(into, cap);
        for (var i = 0; i < draws.Length; i++)
        {
            outs[i] = all.Part(draws[i]);
        }

        all = all.Part(Math.Max(0, all.Grams - Sum(draws)));
    }
}
