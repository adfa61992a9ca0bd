using Evengrist.Ledger;
using Evengrist.Packing.Dispatch;

namespace Evengrist.Records.Packing.Dispatch;

/// <summary>Takes a package back after its load has left: a further movement, from the consignee to the package, and a hold on it at once.</summary>
/// <param name="Number">The load.</param>
/// <param name="Code">The package.</param>
public sealed record TakeBack(string Number, string Code)
{
    /// <summary>Takes it in, or says why not.</summary>
    public LoadAnswer In(Mill mill, Act who)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(who);
        var load = DispatchShelf.Find(mill, Number);
        var package = load?.Packages.FirstOrDefault(p => p.Code.Equals(Code?.Trim(), StringComparison.OrdinalIgnoreCase));
        string[] faults =
        [
            .. who.By.Length == 0 ? ["Say who you are first: every act at the ramp carries a name."] : Array.Empty<string>(), .. who.Reason.Length == 0 ? ["Say why it came back."] : Array.Empty<string>(),
            .. load is null ? [$"There is no load {Number}."] : load.Departed is not { } left ? [$"Load {load.Number} has not left: take the pallet off instead."]
                : package is null ? [$"{Code} did not leave on load {load.Number}."]
                : load.Returned.FirstOrDefault(r => r.Code == package.Code) is { } back ? [$"{back.Code} came back on {back.At} already, taken in by {back.By}."]
                : who.At < left.At ? [$"It left on {left.At}: it cannot be back before that."] : Array.Empty<string>(),
        ];
        if (faults.Length > 0)
        {
            return new(null, [.. faults.Select(f => new LoadFinding(FindingWeight.Stop, f))]);
        }

        try
        {
            mill.Record(view => Drafts(view.Book, load!, package!.Code, who), who.By, SendOff.Source);
        }
        catch (LedgerRefusal refusal)
        {
            return new(null, [new(FindingWeight.Stop, refusal.Message)]);
        }

        return DispatchShelf.Change(mill, load!.Number, who.By, now => now.Returned.Any(r => r.Code == package!.Code) ? new(null, []) : new(now with { Returned = [.. now.Returned, new(package!.Code, who.At, who.By, who.Reason)] }, []));
    }

    private static Draft[] Drafts(Book book, DispatchLoad load, string code, Act who)
    {
        var (package, consignee) = (book.Named(code).Id, book.Named(load.Consignee).Id);
        var gone = book.MovementsOf(package).Select(m => book.Movements[m]).Last(m => m.From == package && m.To == consignee);
        return
        [
            new Move($"{load.Number} {code} back", load.Consignee, code, gone.Mass, who.At) { Note = $"back from load {load.Number}: {who.Reason}" },
            new Happen($"{load.Number} {code} back held", code, who.At, HappeningKind.Held, $"came back from {load.Consignee}: {who.Reason}"),
        ];
    }
}
