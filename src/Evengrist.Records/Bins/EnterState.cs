using Evengrist.Bins.States;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Bins;

/// <summary>A named person enters what befell a bin: a hold, gas, a person inside, a shut gate, or the end of one; over already, both are recorded together.</summary>
/// <param name="Key">The source's own key, so that the same entry sent twice is one.</param>
/// <param name="Bin">Code of the bin.</param>
/// <param name="Kind">What befell it.</param>
/// <param name="At">When.</param>
/// <param name="Words">Why, or by whom, in words; demanded.</param>
public sealed record EnterState(string Key, string Bin, HappeningKind Kind, Instant At, string Words)
{
    private const string Source = "bin page";

    /// <summary>When it was over; null while it stands.</summary>
    public Instant? Until { get; init; }

    /// <summary>What the licensed person stated; demanded where gas is cleared.</summary>
    public GasClearance? Clearance { get; init; }

    /// <summary>The kind that ends a kind; null where nothing does.</summary>
    public static HappeningKind? EndOf(HappeningKind kind) => kind switch
    {
        HappeningKind.Held => HappeningKind.Released,
        HappeningKind.Shut => HappeningKind.Reopened,
        HappeningKind.UnderGas => HappeningKind.GasCleared,
        HappeningKind.PersonInside => HappeningKind.PersonOut,
        _ => null,
    };

    /// <summary>Records it.</summary>
    /// <exception cref="LedgerRefusal">A rule is broken, an end is entered where nothing has begun, or a clearance lacks the person or the licence; nothing was recorded.</exception>
    public Receipt In(Mill mill, string by, Instant? recorded = null)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Record(
            view =>
            {
                DemandBeginning(view.Book);
                return [.. Drafts()];
            },
            by, Source, recorded);
    }

    // An end without a beginning is most likely meant for another bin, which would go on standing barred unnoticed. The same end sent twice is no fault.
    private void DemandBeginning(Book book)
    {
        var place = book.Named(Bin);
        var bars = book.BarsOn(place.Id, At);
        var (bar, stands, isNothing) = Kind switch
        {
            HappeningKind.Released => (bars.Held, "on hold", "nothing to release"),
            HappeningKind.GasCleared => (bars.UnderGas, "under gas", "nothing to clear"),
            HappeningKind.PersonOut => (bars.PersonInside, "entered by anybody", "nobody to come out"),
            HappeningKind.Reopened => (bars.Shut, "shut", "nothing to reopen"),
            _ => (null, "", ""),
        };
        if (stands.Length > 0 && bar is null && !book.HappeningsOn(place.Id).Any(h => h.Kind == Kind && h.At == At))
        {
            throw new LedgerRefusal(LedgerRule.Malformed, $"{place.Code} is not {stands} at that moment: there is {isNothing}. Is it the right bin, and the right time?") { Place = Bin, At = At };
        }
    }

    private IEnumerable<Draft> Drafts()
    {
        yield return new Happen(Key, Bin, At, Kind, Kind == HappeningKind.GasCleared ? Cleared() : Words);
        if (Until is not { } until)
        {
            yield break;
        }

        if (EndOf(Kind) is not { } end)
        {
            throw new LedgerRefusal(LedgerRule.Malformed, $"{Bin}: only a hold, a shut gate, gas and a person inside have an end. Leave the end out.") { Place = Bin };
        }

        if (until < At)
        {
            throw new LedgerRefusal(LedgerRule.Malformed, $"{Bin}: it ends before it begins. Check both times.") { Place = Bin };
        }

        yield return new Happen(Key + " over", Bin, until, end, end == HappeningKind.GasCleared ? Cleared() : Words);
    }

    private string Cleared()
    {
        var faults = Clearance?.Faults ?? new GasClearance("", "").Faults;
        return faults.Count == 0
            ? Happening.TextOf(Words.Length > 0 ? $"{Clearance!.Words} ({Words})" : Clearance!.Words, Clearance.ToJson())
            : throw new LedgerRefusal(LedgerRule.Malformed, $"{Bin}: {string.Join(" ", faults)}") { Place = Bin };
    }
}
