using Evengrist.Packing.Lines;
using Evengrist.Packing.Products;
using Evengrist.Packing.Runs;

namespace Evengrist.Packing.Boards;

/// <summary>Rules for changing over that name flours or products, written out for every pair of products.</summary>
internal static class ProductChanges
{
    /// <summary>One rule for each pair: the mill's first that fits; from one pack to another of the same flour, where no rule names either, the minutes for a change of pack.</summary>
    /// <param name="book">The mill's rules.</param>
    /// <param name="products">Code and flour of each product.</param>
    public static IReadOnlyList<ChangeRule> Of(LineBook book, IReadOnlyList<(string Code, string Flour)> products) =>
        [.. products.SelectMany(a => products.Where(b => b.Code != a.Code).Select(b => Of(book, a, b)))];

    private static ChangeRule Of(LineBook book, (string Code, string Flour) after, (string Code, string Flour) into)
    {
        var isPack = after.Flour == into.Flour;
        var rule = book.Rules.FirstOrDefault(r => (Fits(r.After, r.Into, after, into) || (r.EitherWay && Fits(r.Into, r.After, after, into))) && (!isPack || Names(r, after, into)));
        return rule is null
            ? new ChangeRule(after.Code, into.Code, isPack ? book.PackChangeMinutes : 0)
            : rule with { After = after.Code, Into = into.Code, EitherWay = false };
    }

    // Within a flour only a rule that names a product or this flour on both sides says anything of a change of pack.
    private static bool Names(ChangeRule rule, (string Code, string Flour) after, (string Code, string Flour) into) =>
        (rule.After is not null && rule.Into is not null) || rule.After == after.Code || rule.Into == into.Code;

    private static bool Fits(string? before, string? next, (string Code, string Flour) after, (string Code, string Flour) into) => Is(before, after) && Is(next, into);

    private static bool Is(string? word, (string Code, string Flour) product) => word is null || word.Equals(product.Code, StringComparison.OrdinalIgnoreCase) || word.Equals(product.Flour, StringComparison.OrdinalIgnoreCase);

    /// <summary>Code and flour of every product that runs or lines have; what is on a line and no product is its own flour.</summary>
    public static IReadOnlyList<(string Code, string Flour)> Named(IEnumerable<string> codes, IReadOnlyDictionary<string, Product> products) =>
        [.. codes.Distinct().Select(c => (c, products.TryGetValue(c, out var product) ? product.Flour : c))];
}
