using Evengrist.Milling.OnPaper;
using Evengrist.Milling.Sheet;

namespace Evengrist.Milling.Suggesting;

/// <summary>What can be wished for or kept.</summary>
public enum WishKind
{
    /// <summary>Not said; the default value is refused.</summary>
    None = 0,

    /// <summary>Yield of products together, per cent of the wheat to first break.</summary>
    Yield = 1,

    /// <summary>Ash of products together, per cent of dry matter.</summary>
    Ash = 2,

    /// <summary>Protein of products together, per cent of dry matter.</summary>
    Protein = 3,

    /// <summary>Damaged starch of products together, per cent of dry matter. Not tuned.</summary>
    DamagedStarch = 4,

    /// <summary>What all products bring in 24 h; the wheat's cost is not in it.</summary>
    MoneyPerDay = 5,

    /// <summary>What enters a passage, t/h of dry matter.</summary>
    Load = 6,
}

/// <summary>A figure of the mill that is wished for or kept.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Of">Codes of the products it is of, of one passage for a load; empty for all flour, and for money.</param>
public sealed record WishFigure(WishKind Kind, IReadOnlyList<string> Of)
{
    /// <summary>What it is, as "ash of 1M 2M".</summary>
    public string Words => Kind switch
    {
        WishKind.MoneyPerDay => "money in 24 h",
        WishKind.Load => $"load of {string.Join(" ", Of)}",
        _ => $"{Name} of {(Of.Count == 0 ? "all flour" : string.Join(" ", Of))}",
    };

    private string Name => Kind switch { WishKind.Yield => "yield", WishKind.Ash => "ash", WishKind.Protein => "protein", _ => "damaged starch" };

    /// <summary>The products it is of.</summary>
    public ProductSet On(FlowSheet sheet) => new(Words, Of.Count > 0 ? Of : MillForecast.FlourOf(sheet));

    internal IEnumerable<string> Faults(FlowSheet sheet, bool priced)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var codes = Kind is WishKind.Load ? sheet.Passages.Select(p => p.Code).ToHashSet(StringComparer.Ordinal) : sheet.Products.Select(p => p.Code).ToHashSet(StringComparer.Ordinal);
        return Kind switch
        {
            WishKind.None => ["Say which figure is meant: yield, ash, protein, damaged starch, money a day or the load of a passage."],
            WishKind.MoneyPerDay when !priced => ["Money a day needs the price of the products: give it, or wish for something else."],
            WishKind.MoneyPerDay when Of.Count > 0 => ["Money a day is of all products: name none."],
            WishKind.Load when Of.Count != 1 => ["A load is that of one passage: name it."],
            _ => [.. Of.Where(c => !codes.Contains(c)).Select(c => $"There is no {(Kind is WishKind.Load ? "passage" : "product")} {c} on the flow sheet."), .. Of.GroupBy(c => c).Where(g => g.Count() > 1).Select(g => $"{g.Key} is named {g.Count()} times: once is enough.")],
        };
    }
}
