using Evengrist.Milling.Sheet;
using Evengrist.Milling.Stock;

namespace Evengrist.Milling.Learning;

/// <summary>A release test that is worth taking next: how much surer it would make the yield of all flour.</summary>
/// <param name="Passage">Code of the passage.</param>
/// <param name="Now">Standard uncertainty of the yield as the mill is known, points, the model's own shortfall left out.</param>
/// <param name="After">The same after the test.</param>
public sealed record NextTest(string Passage, double Now, double After)
{
    /// <summary>Every release test the sheet allows, the one that tells most first.</summary>
    /// <remarks>With a test of gradient m and error σ the variance gᵀΣg falls by (gᵀΣm)² / (σ² + mᵀΣm).</remarks>
    /// <param name="sheet">The flow sheet.</param>
    /// <param name="wheat">The wheat.</param>
    /// <param name="tuning">What is known of the mill.</param>
    public static IReadOnlyList<NextTest> Of(FlowSheet sheet, MillWheat wheat, MillTuning tuning)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(tuning);
        var figures = MillFigures.Of(sheet, wheat, tuning.Keys, tuning.Values, TestErrors.Usual);
        var flour = figures.Yield([.. sheet.Products.Where(p => p.Kind is ProductKind.Flour).Select(p => p.Code)]).Gradient;
        var spread = tuning.Covariance * flour;
        var now = flour * spread;
        return [.. Releases(sheet, figures).Select(r => new NextTest(r.Passage, Math.Sqrt(now), Math.Sqrt(Math.Max(0, now - (Math.Pow(spread * r.Figure.Gradient, 2) / Told(r.Figure, tuning)))))).OrderBy(t => t.After).ThenBy(t => t.Passage, StringComparer.Ordinal)];
    }

    internal static IEnumerable<(string Passage, Figure Figure)> Releases(FlowSheet sheet, MillFigures figures)
        => sheet.Passages.Select(p => (p.Code, Figure: figures.Release(p.Code))).Where(x => x.Figure is not null).Select(x => (x.Code, x.Figure!));

    internal static double Told(Figure release, MillTuning tuning)
        => Math.Pow(TestErrors.Usual.ReleasePoints, 2) + Math.Pow(release.ModelError, 2) + (release.Gradient * (tuning.Covariance * release.Gradient));
}
