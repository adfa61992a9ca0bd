using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Records.Ledger;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights;

/// <summary>What a person filled in about a bin.</summary>
public sealed class BinAct
{
    /// <summary>Made with the form, so that the same form sent twice is one fact.</summary>
    public string? Key { get; set; }

    /// <summary><c>hold</c>, <c>release</c>, <c>empty</c>, <c>note</c> or <c>state:</c> with one of <see cref="BinStates.All"/>.</summary>
    public string? What { get; set; }

    /// <summary>When, by the mill's clock.</summary>
    public string? At { get; set; }

    /// <summary>Why.</summary>
    public string? Text { get; set; }

    /// <summary>Records it under the visitor's name; null where the form cannot be read.</summary>
    /// <exception cref="LedgerRefusal">A rule is broken; nothing was recorded.</exception>
    public Receipt? Record(string code, Visit visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        var text = (Text ?? "").Trim();
        if (visit.Read(At) is not { } at || string.IsNullOrWhiteSpace(Key) || Kind is not { } kind || visit.Name is not { } name)
        {
            return null;
        }

        return kind == HappeningKind.ProvenEmpty
            ? new ProveEmpty(code, at, text).In(visit.Mill, name).Receipt
            : visit.Mill.Record([new Happen(Key, code, at, kind, kind != HappeningKind.State ? text : text.Length == 0 ? State! : $"{State}: {text}")], name, "bin page");
    }

    private string? State => What?.StartsWith("state:", StringComparison.Ordinal) == true && BinStates.All.Contains(What[6..]) ? What[6..] : null;

    private HappeningKind? Kind => What switch
    {
        "hold" => HappeningKind.Held,
        "release" => HappeningKind.Released,
        "empty" => HappeningKind.ProvenEmpty,
        "note" => HappeningKind.Note,
        _ => State is null ? null : HappeningKind.State,
    };
}
