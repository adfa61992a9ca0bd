using NodaTime;

namespace Evengrist.Laboratory.Specifications;

/// <summary>What a flour is to be, for a customer and a market. Kept by code and version.</summary>
/// <param name="Code">What people call it, of letters, digits, dots and dashes.</param>
/// <param name="Flour">The flour: the material of its pallets and loads.</param>
/// <param name="Items">One line for each property.</param>
public sealed record Specification(string Code, string Flour, IReadOnlyList<SpecificationItem> Items)
{
    /// <summary>The kind of its papers.</summary>
    public const string Kind = "specification";

    private const int LongestCode = 40;

    /// <summary>The flour in words; may be empty.</summary>
    public string Name { get; init; } = "";

    /// <summary>The customer as its places are named; empty for the mill's own, which holds where no customer's does.</summary>
    public string Customer { get; init; } = "";

    /// <summary>The market whose legal rules hold beside it, as the table of rules names it; empty for none.</summary>
    public string Market { get; init; } = "";

    /// <summary>From when on this version holds.</summary>
    public LocalDate? ValidFrom { get; init; }

    /// <summary>What else is agreed.</summary>
    public string Remark { get; init; } = "";

    /// <summary>What is wrong, each a sentence that says what to do; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() => Items.Any(i => i is null) ? ["An item is null: leave it out."] :
    [
        .. Code.Length is > 0 and <= LongestCode && Code.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '.') ? Array.Empty<string>() : [$"The code is of 1 to {LongestCode} letters, digits, dots and dashes; got “{Code}”."],
        .. string.IsNullOrWhiteSpace(Flour) ? ["Say which flour it is for: the material of its pallets."] : Array.Empty<string>(),
        .. Items.Count == 0 ? ["Give one line or more."] : Array.Empty<string>(),
        .. Items.SelectMany(i => i.Faults()),
        .. Items.GroupBy(i => (i.What, i.Method.ToUpperInvariant())).Where(g => g.Count() > 1).Select(g => $"{g.First().Title} stands twice{(g.First().Method.Length > 0 ? " by one method" : "")}; keep one."),
    ];
}
