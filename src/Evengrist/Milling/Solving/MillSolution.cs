using Evengrist.Milling.Sheet;

namespace Evengrist.Milling.Solving;

/// <summary>What a mill does as solved: every passage and every product.</summary>
/// <param name="Report">How solving ended; the figures hold where it converged.</param>
/// <param name="Passages">By passage, in the order of the flow sheet.</param>
/// <param name="Products">By product, in the order of the flow sheet.</param>
public sealed record MillSolution(MillReport Report, IReadOnlyList<SolvedPassage> Passages, IReadOnlyList<SolvedProduct> Products)
{
    /// <summary>All products of a kind together, t/h as they flow.</summary>
    public double TonnesPerHour(ProductKind kind) => Products.Where(p => p.Product.Kind == kind).Sum(p => p.Flow.TonnesPerHour);

    /// <summary>A passage by its code.</summary>
    public SolvedPassage Passage(string code) => Passages.First(p => p.Passage.Code == code);

    /// <summary>A product by its code.</summary>
    public SolvedProduct Product(string code) => Products.First(p => p.Product.Code == code);

    /// <summary>Work of all rolls, kW.</summary>
    public double RollKilowatts => Passages.Sum(p => p.RollKilowatts);
}

/// <summary>A passage as solved.</summary>
/// <param name="Passage">The passage.</param>
/// <param name="In">What enters.</param>
/// <param name="Outlets">What leaves by each outlet.</param>
/// <param name="ReleasePercent">Share of its feed that falls through its first cloth whose overs leave, per cent of dry matter; null where it has none or no rolls.</param>
/// <param name="RollKilowatts">Work of its rolls, kW; 0 where it has none. Not tuned.</param>
public sealed record SolvedPassage(Passage Passage, MillFlow In, IReadOnlyList<MillFlow> Outlets, double? ReleasePercent, double RollKilowatts);

/// <summary>A product as solved.</summary>
/// <param name="Product">The product.</param>
/// <param name="Flow">What flows.</param>
/// <param name="YieldPercent">Share of the wheat to first break, both as they flow, per cent.</param>
public sealed record SolvedProduct(MillProduct Product, MillFlow Flow, double YieldPercent);
