using Evengrist.Ledger;
using Evengrist.Packing.Dispatch;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Packing.Dispatch;

/// <summary>Sends a load off: one act that moves every package of it to the consignee in the ledger, all or none, and once however often it is sent.</summary>
/// <param name="Number">The load.</param>
/// <param name="Seals">The seals as read at the gate.</param>
public sealed record SendOff(string Number, IReadOnlyList<string> Seals)
{
    /// <summary>The source of its movements.</summary>
    public const string Source = "dispatch";

    /// <summary>Sends it off, or says why not.</summary>
    public LoadAnswer In(Mill mill, Act who)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(who);
        if (DispatchShelf.Find(mill, Number) is not { } load)
        {
            return new(null, [new(FindingWeight.Stop, $"There is no load {Number}. Plan it first.")]);
        }

        if (load.IsOpen && WroteAt(mill, load) is { } wrote)
        {
            return Keep(mill, load, new Departure(wrote, who.By) { Seals = Read }, [], who);
        }

        var seen = SeenLoad.Of(mill, RampPapers.Of(mill), load, who.At);
        var rules = seen.Rules;
        IReadOnlyList<LoadFinding> findings =
        [
            .. rules.MaySend(who.By) ? Array.Empty<LoadFinding>() : [new(FindingWeight.Stop, $"{who.By} is not among those who may send a load off: {string.Join(", ", rules.Persons)}.")],
            .. load.IsOpen ? seen.Against(Seals) : [],
        ];
        var left = new Departure(who.At, who.By) { Seals = Read, Reason = who.Reason, Said = [.. findings.Select(f => f.Words)] };
        var tried = LoadActs.SendOff(load, left, findings, who);
        if (tried.Load is null)
        {
            return tried;
        }

        try
        {
            mill.Record(view => Drafts(view.Book, load, who.At), who.By, Source, provided: view => NoHold(view.Book, load));
        }
        catch (LedgerRefusal refusal)
        {
            // The same load sent off by another at this very time: theirs counts.
            return WroteAt(mill, load) is { } at ? Keep(mill, load, left with { At = at }, findings, who) : new(null, [.. findings, new(FindingWeight.Stop, refusal.Message)]);
        }

        return Keep(mill, load, left, findings, who);
    }

    private string[] Read => [.. Seals.Select(s => s.Trim()).Where(s => s.Length > 0)];

    private static LoadAnswer Keep(Mill mill, DispatchLoad load, Departure left, IReadOnlyList<LoadFinding> findings, Act who)
    {
        var kept = DispatchShelf.Change(mill, load.Number, who.By, now => now.Departed is not null ? new(null, []) : new(now with { Departed = left, Packages = load.Packages }, findings));
        return kept.Load is null && kept.Findings.Count == 0 ? LoadActs.SendOff(DispatchShelf.Find(mill, load.Number)!, left, [], who) : kept;
    }

    // What it carries is what the ledger holds of each package, read in the same write.
    private static Draft[] Drafts(Book book, DispatchLoad load, Instant at) => [.. load.Packages.Select(p => (Draft)Leaves(load, p.Code, book.StockOf(book.Named(p.Code).Id, at), at))];

    private static Move Leaves(DispatchLoad load, string code, Mass mass, Instant at) => new Move($"{load.Number} {code}", code, load.Consignee, mass, at) { Note = $"load {load.Number}" };

    // When the ledger already has the whole load leaving by this act, as where the paper could not be kept any more; null otherwise.
    private static Instant? WroteAt(Mill mill, DispatchLoad load)
    {
        var gone = mill.Ask(view => load.Packages.Select(p => Gone(view.Book, load, p.Code)).ToArray());
        if (gone.Length == 0 || gone.Any(m => m is null))
        {
            return null;
        }

        try
        {
            return mill.NewAmong([.. load.Packages.Select((p, i) => (Draft)Leaves(load, p.Code, gone[i]!.Value.Mass, gone[i]!.Value.At))], Source).Count == 0 ? gone[0]!.Value.At : null;
        }
        catch (LedgerRefusal)
        {
            return null;
        }
    }

    private static Movement? Gone(Book book, DispatchLoad load, string code)
    {
        if (book.Find(code) is not { } package || book.Find(load.Consignee) is not { } consignee)
        {
            return null;
        }

        return book.MovementsOf(package.Id).Select(m => (Movement?)book.Movements[m]).LastOrDefault(m => m!.Value.From == package.Id && m.Value.To == consignee.Id);
    }

    // A hold laid meanwhile blocks even where the departure is entered for an earlier moment.
    private static void NoHold(Book book, DispatchLoad load)
    {
        foreach (var place in load.Packages.Select(p => book.Named(p.Code)))
        {
            if (book.HoldOn(place.Id, Instant.MaxValue) is { } hold)
            {
                throw new LedgerRefusal(LedgerRule.OnHold, $"{place.Code} is on HOLD since {hold.At}: {hold.Words}. The load stays here; take the pallet off, or let a named person release it.") { Place = place.Code, At = hold.At };
            }
        }
    }
}
