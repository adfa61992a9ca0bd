using Evengrist.Bins.States;
using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Records.Bins;
using Evengrist.Records.Ledger;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights;

/// <summary>What a person filled in about a bin.</summary>
public sealed class BinAct
{
    /// <summary>Made with the form, so that the same form sent twice is one fact.</summary>
    public string? Key { get; set; }

    /// <summary>One of <see cref="Choices"/>, or <c>empty</c>.</summary>
    public string? What { get; set; }

    /// <summary>When, by the mill's clock.</summary>
    public string? At { get; set; }

    /// <summary>When it was over, by the mill's clock; empty while it stands.</summary>
    public string? Until { get; set; }

    /// <summary>Why.</summary>
    public string? Text { get; set; }

    /// <summary>The licensed person who states that it is clear of gas.</summary>
    public string? Person { get; set; }

    /// <summary>That person's licence.</summary>
    public string? Licence { get; set; }

    /// <summary>Gas readings as given.</summary>
    public string? Readings { get; set; }

    /// <summary>What can be entered, by its word in the form.</summary>
    public static IReadOnlyList<(string What, HappeningKind Kind, string Words)> Choices { get; } =
    [
        ("hold", HappeningKind.Held, "Put on hold: nothing may go in or out"),
        ("release", HappeningKind.Released, "Release from hold"),
        ("inside", HappeningKind.PersonInside, "Person inside: nothing may go in or out"),
        ("out", HappeningKind.PersonOut, "Nobody is inside any more"),
        ("gas", HappeningKind.UnderGas, "Under gas: nothing may go in or out"),
        ("cleared", HappeningKind.GasCleared, "Cleared of gas, as the licensed person states"),
        ("shut", HappeningKind.Shut, "Shut: nothing may go in"),
        ("reopen", HappeningKind.Reopened, "Reopened"),
        ("note", HappeningKind.Note, "A note for those who come after"),
    ];

    /// <summary>What the bin's bars leave to be entered: the beginning of what does not stand, the end of what does.</summary>
    public static IEnumerable<(string What, HappeningKind Kind, string Words)> ChoicesFor(Bars bars)
    {
        ArgumentNullException.ThrowIfNull(bars);
        (HappeningKind Begin, Happening? Bar)[] stands = [(HappeningKind.Held, bars.Held), (HappeningKind.PersonInside, bars.PersonInside), (HappeningKind.UnderGas, bars.UnderGas), (HappeningKind.Shut, bars.Shut)];
        return Choices.Where(c => !stands.Any(s => (s.Bar is not null && s.Begin == c.Kind) || (s.Bar is null && EnterState.EndOf(s.Begin) == c.Kind)));
    }

    /// <summary>Records it under the visitor's name; null where the form cannot be read.</summary>
    /// <exception cref="LedgerRefusal">A rule is broken; nothing was recorded.</exception>
    public Receipt? Record(string code, Visit visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        var text = (Text ?? "").Trim();
        var until = visit.Read(Until);
        if (visit.Read(At) is not { } at || (until is null && !string.IsNullOrWhiteSpace(Until)) || string.IsNullOrWhiteSpace(Key) || visit.Name is not { } name)
        {
            return null;
        }

        if (What == "empty")
        {
            return new ProveEmpty(code, at, text).In(visit.Mill, name).Receipt;
        }

        return Choices.FirstOrDefault(c => c.What == What) is not { What: not null } choice ? null
            : new EnterState(Key, code, choice.Kind, at, text) { Until = until, Clearance = new GasClearance((Person ?? "").Trim(), (Licence ?? "").Trim(), (Readings ?? "").Trim()) }.In(visit.Mill, name);
    }
}
