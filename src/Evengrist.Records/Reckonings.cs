using Evengrist.Ledger;
using Evengrist.Tracing;

namespace Evengrist.Records;

/// <summary>One reckoning for each hypothesis, brought up to date when it is asked for, and the tracer over them.</summary>
internal sealed class Reckonings(Book book)
{
    private static readonly Outflow[] Hypotheses = Enum.GetValues<Outflow>();
    private readonly Reckoning?[] kept = new Reckoning?[Hypotheses.Length];
    private Reckoning[] traced = [];
    private Tracer? tracer;

    public Reckoning Of(Outflow outflow)
    {
        var place = Array.IndexOf(Hypotheses, outflow);
        ArgumentOutOfRangeException.ThrowIfNegative(place, nameof(outflow));
        var reckoning = kept[place] ?? new Reckoning(book, outflow);

        // One that failed half way is not to be trusted again: it is kept only once it is level with the book.
        kept[place] = null;
        reckoning.CatchUp();
        return kept[place] = reckoning;
    }

    /// <summary>Whether it was reckoned since the mill was opened, so that asking again takes no more than what came since.</summary>
    public bool Has(Outflow outflow) => kept[Array.IndexOf(Hypotheses, outflow)] is not null;

    /// <summary>The tracer over all of them, level with the book.</summary>
    public Tracer Tracer()
    {
        Warm();
        if (tracer is null || !kept.SequenceEqual(traced))
        {
            traced = [.. kept.OfType<Reckoning>()];
            tracer = new Tracer(book, traced);
        }

        return tracer;
    }

    /// <summary>All of them at once; each only reads the book.</summary>
    public void Warm() => Parallel.ForEach(Hypotheses, hypothesis => Of(hypothesis));
}
