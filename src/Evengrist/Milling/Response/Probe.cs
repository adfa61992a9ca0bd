using Evengrist.Milling.Solving;

namespace Evengrist.Milling.Response;

/// <summary>A place in the mill where dry matter is counted: outlets, each with a weight, and of each size a share where only some sizes count.</summary>
/// <param name="Outlets">Index of each outlet and its weight.</param>
/// <param name="Sizes">Share of each size class that counts; null where all do.</param>
internal sealed record Probe(IReadOnlyList<(int Outlet, double Weight)> Outlets, IReadOnlyList<double>? Sizes = null)
{
    /// <summary>Index of the product it counts; −1 for none.</summary>
    public int Product { get; private init; } = -1;

    /// <summary>Index of the passage whose feed it counts; −1 for none.</summary>
    public int Passage { get; private init; } = -1;

    /// <summary>What arrives at a product.</summary>
    public static Probe OfProduct(MillRun run, int product) => new(Arriving(run, run.Model.Ways.IntoProduct[product])) { Product = product };

    /// <summary>What arrives at a passage.</summary>
    public static Probe OfPassage(MillRun run, int passage) => new(Arriving(run, run.Model.Ways.Into[passage])) { Passage = passage };

    /// <summary>Whether stock that goes a way is counted where it arrives.</summary>
    public bool Counts(Way way) => (Product >= 0 && way.Product == Product) || (Passage >= 0 && way.To == Passage);

    private static (int, double)[] Arriving(MillRun run, int[] ways) => [.. ways.Select(w => (run.Model.Ways.Ways[w].Outlet, run.Knobs.Shares[w]))];
}
