using Evengrist.Ledger;

namespace Evengrist.Records;

/// <summary>What a question may look at. Valid only while the question is asked: take values out of it, not the view itself.</summary>
public sealed class MillView
{
    internal MillView(Book book) => Book = book;

    /// <summary>The ledger; to be read only.</summary>
    public Book Book { get; }
}
