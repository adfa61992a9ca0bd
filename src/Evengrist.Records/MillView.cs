using Evengrist.Ledger;
using Evengrist.Tracing;

namespace Evengrist.Records;

/// <summary>What a question may look at. Valid only while the question is asked: take values out of it, not the view itself.</summary>
public sealed class MillView
{
    private readonly Reckonings reckonings;

    internal MillView(Book book, Reckonings reckonings) => (Book, this.reckonings) = (book, reckonings);

    /// <summary>The ledger; to be read only.</summary>
    public Book Book { get; }

    /// <summary>What lies where and what came from what under a hypothesis, up to date with the book.</summary>
    public Reckoning Reckoning(Outflow outflow) => reckonings.Of(outflow);

    /// <summary>Whether a hypothesis was reckoned since the mill was opened; the first time takes a second for a year.</summary>
    public bool HasReckoned(Outflow outflow) => reckonings.Has(outflow);

    /// <summary>What answers where something came from and what it has reached, up to date with the book.</summary>
    public Tracer Tracer() => reckonings.Tracer();
}
