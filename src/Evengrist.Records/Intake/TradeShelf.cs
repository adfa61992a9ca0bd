using Evengrist.Intake.Paying;
using Evengrist.Intake.Trade;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Intake;

/// <summary>The papers of the scale house that a mill keeps, with its contracts: what loads are read with.</summary>
public sealed class TradeShelf
{
    private readonly MillSettings settings;

    private TradeShelf(Mill mill)
    {
        (Terms, settings) = (TermsShelf.Of(mill), mill.Settings);
        Papers = new TradePapers(Read<Party>(mill, Party.Kind), Read<FieldSheet>(mill, FieldSheet.Kind), Read<Vehicle>(mill, Vehicle.Kind), Read<Certificate>(mill, Certificate.Kind));
    }

    /// <summary>The contracts.</summary>
    public TermsShelf Terms { get; }

    /// <summary>Parties, fields, vehicles, certificates.</summary>
    public TradePapers Papers { get; }

    /// <summary>Everything a mill keeps.</summary>
    public static TradeShelf Of(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return new TradeShelf(mill);
    }

    /// <summary>Reads loads of a view at a moment.</summary>
    public LoadReader Reader(MillView view, Instant at)
    {
        ArgumentNullException.ThrowIfNull(view);
        return Reader(view.Book, at);
    }

    /// <summary>Reads loads of a ledger at a moment.</summary>
    public LoadReader Reader(Book book, Instant at)
    {
        ArgumentNullException.ThrowIfNull(book);
        return new LoadReader(book, at, Papers, Terms.Find, settings.Zone, settings.DayStart);
    }

    /// <summary>Keeps a paper as the next version, or finds that the newest says the same.</summary>
    /// <returns>The version that says it.</returns>
    /// <exception cref="LedgerRefusal">It has faults; the message says which.</exception>
    public static int Keep<T>(Mill mill, string kind, T paper, string by)
        where T : class, ITradePaper
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(paper);
        return paper.Faults() is { Count: > 0 } faults
            ? throw new LedgerRefusal(LedgerRule.Malformed, string.Join(" ", faults))
            : mill.Papers(kind).KeepNext(paper.Code.Trim(), PaperText.Write(paper), by);
    }

    private static IEnumerable<T> Read<T>(Mill mill, string kind)
        where T : class, ITradePaper
    {
        foreach (var paper in mill.Papers(kind).All())
        {
            if (PaperText.TryRead<T>(paper.Json, out var read, out _))
            {
                yield return read;
            }
        }
    }
}
