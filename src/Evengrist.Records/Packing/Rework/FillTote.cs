using Evengrist.Ledger;
using Evengrist.Packing.Dispatch;
using Evengrist.Packing.Rework;

namespace Evengrist.Records.Packing.Rework;

/// <summary>Empties packages into a tote, all or none, with the reason; the tote is opened where it is not there yet.</summary>
/// <param name="Tote">Code of the tote.</param>
/// <param name="Packages">Codes of pallets and bulk loads; empty to say the reason of a tote that is there, anew.</param>
public sealed record FillTote(string Tote, IReadOnlyList<string> Packages)
{
    /// <summary>Allergens beyond wheat that a person knows to be in it.</summary>
    public IReadOnlyList<string> Allergens { get; init; } = [];

    /// <summary>Does it; every fault where it cannot be, and then nothing is written.</summary>
    public IReadOnlyList<string> In(Mill mill, Act who)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(who);
        var record = new ToteRecord((Tote ?? "").Trim(), who.Reason, who.At, who.By) { Allergens = Allergens };
        if (record.Faults() is { Count: > 0 } faults)
        {
            return faults;
        }

        string[] codes = [.. Packages.Select(p => p.Trim()).Where(p => p.Length > 0).Distinct(StringComparer.OrdinalIgnoreCase)];
        try
        {
            if (codes.Length > 0)
            {
                mill.Record(view => Drafts(view.Book, record, codes, who), who.By, "rework");
            }
            else if (mill.Ask(view => view.Book.Find(record.Tote)) is not { Kind: PlaceKind.ReworkTote })
            {
                return [$"There is no tote {record.Tote}: name the packages that go into it."];
            }
        }
        catch (LedgerRefusal refusal)
        {
            return [refusal.Message];
        }

        var code = mill.Ask(view => view.Book.Named(record.Tote).Code);
        mill.Papers(ToteRecord.Kind).KeepNext(code, (record with { Tote = code }).ToJson(), who.By);
        return [];
    }

    /// <summary>Strikes what was said of a tote; its movements are put right in the ledger.</summary>
    public static IReadOnlyList<string> Strike(Mill mill, string tote, Act who)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(who);
        if (ReworkLedger.Records(mill).GetValueOrDefault((tote ?? "").Trim()) is not { } said)
        {
            return [$"Nothing is said of a tote {tote}."];
        }

        var struck = new ToteRecord(said.Tote, who.Reason, who.At, who.By) { IsStruck = true };
        if (struck.Faults() is { Count: > 0 } faults)
        {
            return faults;
        }

        mill.Papers(ToteRecord.Kind).KeepNext(said.Tote, struck.ToJson(), who.By);
        return [];
    }

    private static Draft[] Drafts(Book book, ToteRecord record, string[] codes, Act who)
    {
        Place[] packages = [.. codes.Select(book.Named)];
        if (packages.FirstOrDefault(p => p.Kind is not (PlaceKind.Pallet or PlaceKind.BulkLoad)) is { } other)
        {
            throw new LedgerRefusal(LedgerRule.NotConnected, $"{other.Code} is a {other.Kind.Words()}: pallets and bulk loads go into a tote; sweepings never do.");
        }

        if (book.Find(record.Tote) is { } there && there.Kind != PlaceKind.ReworkTote)
        {
            throw new LedgerRefusal(LedgerRule.CodeTaken, $"{there.Code} is a {there.Kind.Words()}, no tote. Give the tote another code.");
        }

        return
        [
            .. book.Find(record.Tote) is null ? [new OpenPlace($"tote {record.Tote}", record.Tote, PlaceKind.ReworkTote, "rework", packages[0].Material)] : Array.Empty<Draft>(),
            .. packages.Select(p => (Draft)new Move($"{record.Tote} {p.Code}", p.Code, record.Tote, book.StockOf(p.Id, who.At), who.At) { Note = $"to rework: {who.Reason}" }),
        ];
    }
}
