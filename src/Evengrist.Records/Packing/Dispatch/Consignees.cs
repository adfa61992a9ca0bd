using Evengrist.Ledger;
using Evengrist.Packing.Dispatch;

namespace Evengrist.Records.Packing.Dispatch;

/// <summary>Cards of consignees: papers by the code of the place, nothing lost.</summary>
public static class Consignees
{
    /// <summary>Every card in its newest version, by code.</summary>
    public static IReadOnlyList<ConsigneeCard> All(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(ConsigneeCard.Kind).NewestOfEach().Read<ConsigneeCard>(ConsigneeCard.TryRead).Select(p => p.Value)];
    }

    /// <summary>One card; null where none is kept.</summary>
    public static ConsigneeCard? Find(Mill mill, string code)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return !string.IsNullOrWhiteSpace(code) && mill.Papers(ConsigneeCard.Kind).Newest(code.Trim()) is { } paper && ConsigneeCard.TryRead(paper.Json, out var card, out _) ? card : null;
    }

    /// <summary>Every customer of the ledger with its card, by code; null where none is kept.</summary>
    public static IReadOnlyList<(Place Place, ConsigneeCard? Card)> Customers(Mill mill)
    {
        var cards = All(mill).ToDictionary(c => c.Code, StringComparer.OrdinalIgnoreCase);
        return [.. mill.Ask(view => view.Book.OfKind(PlaceKind.Customer).ToArray()).OrderBy(p => p.Code, StringComparer.OrdinalIgnoreCase).Select(p => (p, cards.GetValueOrDefault(p.Code)))];
    }

    /// <summary>Keeps a card as its next version; every fault where it cannot be, and then nothing is kept.</summary>
    public static (ConsigneeCard? Card, IReadOnlyList<string> Faults) Keep(Mill mill, ConsigneeCard card, string? by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(card);
        var place = mill.Ask(view => string.IsNullOrWhiteSpace(card.Code) ? null : view.Book.Find(card.Code));
        string[] faults =
        [
            .. string.IsNullOrWhiteSpace(by) ? ["Say who you are first: every record carries a name."] : Array.Empty<string>(), .. card.Faults(),
            .. !string.IsNullOrWhiteSpace(card.Code) && place is not { Kind: PlaceKind.Customer } ? [$"There is no customer {card.Code} in the ledger: open its place first."] : Array.Empty<string>(),
        ];
        if (faults.Length > 0)
        {
            return (null, faults);
        }

        var kept = card with { Code = place!.Code };
        mill.Papers(ConsigneeCard.Kind).KeepNext(kept.Code, kept.ToJson(), by!.Trim());
        return (kept, []);
    }
}
