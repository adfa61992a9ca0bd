using Evengrist.Milling.Learning;
using Evengrist.Milling.Sheet;
using Evengrist.Milling.Stock;

namespace Evengrist.Milling.Suggesting;

/// <summary>A question for the best small set of moves. Page: docs/model/suggested-moves.md.</summary>
/// <param name="Sheet">The flow sheet as it is set.</param>
/// <param name="Wheat">The wheat.</param>
/// <param name="Tuning">What is known of the mill.</param>
/// <param name="Wish">What is wished.</param>
public sealed record SuggestSpec(FlowSheet Sheet, MillWheat Wheat, MillTuning Tuning, Wish Wish)
{
    /// <summary>Figures to be kept within bounds.</summary>
    public IReadOnlyList<KeptFigure> Keep { get; init; } = [];

    /// <summary>What may be moved.</summary>
    public MoveRules Rules { get; init; } = new();

    /// <summary>Price of each product by its code, money a tonne; null for no money.</summary>
    public IReadOnlyDictionary<string, decimal>? PricePerTonne { get; init; }

    /// <summary>Chance with which a wished amount and each bound shall hold, as far as the ± of the model goes; above 0.5, at most 0.99. Null asks for the mean alone.</summary>
    public double? Sure { get; init; }

    /// <summary>How many sets are looked for, the best and its alternatives; 1 to 5.</summary>
    public int Sets { get; init; } = 3;

    /// <summary>What is wrong, each a sentence; empty where it can be answered.</summary>
    public IReadOnlyList<string> Faults()
    {
        string[] sheet = [.. Sheet.Faults(), .. Wheat.Faults()];
        return sheet.Length > 0 ? sheet :
        [
            .. Wish.Figure.Faults(Sheet, PricePerTonne is not null), .. Keep.SelectMany(k => k.Figure.Faults(Sheet, PricePerTonne is not null).Concat(k.Faults())), .. Rules.Faults(),
            .. Wish.By is null or (> 0 and < double.PositiveInfinity) ? Array.Empty<string>() : ["Wish for an amount above 0, or leave it empty for as much as possible; whether it is to rise or fall is said beside it."],
            .. Rules.FlowStepPercent > 0 && Keep.Select(k => k.Figure).Append(Wish.Figure).Any(f => f.Kind is WishKind.MoneyPerDay) ? ["Money a day counts what the products bring and not what the wheat costs: leave the flow of wheat as it is while money is wished for."] : Array.Empty<string>(),
            .. Rules.Leave.Where(c => Sheet.Passages.All(p => p.Code != c)).Select(c => $"There is no passage {c} on the flow sheet to be left as it is."),
            .. Sure is null or (> 0.5 and <= 0.99) ? Array.Empty<string>() : ["The chance asked for lies above 50 % and is at most 99 %."],
            .. Sets is >= 1 and <= 5 ? Array.Empty<string>() : ["1 to 5 sets can be looked for."],
        ];
    }
}
