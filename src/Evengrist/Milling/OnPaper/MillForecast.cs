using Evengrist.Milling.Learning;
using Evengrist.Milling.Sheet;
using Evengrist.Milling.Solving;
using Evengrist.Milling.Stock;

namespace Evengrist.Milling.OnPaper;

/// <summary>What a mill is to be expected to do at a setting, every figure ±.</summary>
/// <param name="Solution">The mill solved with what tuning found.</param>
/// <param name="Products">By product, in the order of the flow sheet.</param>
/// <param name="Passages">By passage, in the order of the flow sheet.</param>
/// <param name="Flour">All flour streams together.</param>
/// <param name="IsTuned">Whether anything was measured in this mill; where not, the screen says so.</param>
public sealed record MillForecast(MillSolution Solution, IReadOnlyList<SetForecast> Products, IReadOnlyList<PassageForecast> Passages, SetForecast Flour, bool IsTuned)
{
    /// <summary>Forecasts a mill.</summary>
    /// <param name="sheet">The flow sheet as set.</param>
    /// <param name="wheat">The wheat.</param>
    /// <param name="tuning">What is known of the mill.</param>
    /// <param name="sets">Further products to take together, as a patent: a name and the codes.</param>
    /// <exception cref="ArgumentException">The sheet or wheat has faults, or the tuning is of another flow sheet.</exception>
    public static MillForecast Of(FlowSheet sheet, MillWheat wheat, MillTuning tuning, IReadOnlyList<ProductSet>? sets = null)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return Of(sheet, Figures(sheet, wheat, tuning), tuning, sets);
    }

    internal static MillForecast Of(FlowSheet sheet, MillFigures figures, MillTuning tuning, IReadOnlyList<ProductSet>? sets)
    {
        SetForecast Of(ProductSet set) => new(set.Name, To(figures.Yield(set.Products)), To(figures.Ash(set.Products)), To(figures.Protein(set.Products)));
        Estimate To(Figure figure) => new(figure.Value, figure.Uncertainty(tuning));
        return new MillForecast(
            figures.Solution,
            [.. sheet.Products.Select(p => Of(new ProductSet(p.Code, [p.Code]))), .. (sets ?? []).Select(Of)],
            [.. sheet.Passages.Select(p => new PassageForecast(p.Code, To(figures.Load(p.Code)), figures.Release(p.Code) is { } release ? To(release) : null))],
            Of(new ProductSet("flour", FlourOf(sheet))), tuning.IsTuned);
    }

    internal static string[] FlourOf(FlowSheet sheet) => [.. sheet.Products.Where(p => p.Kind is ProductKind.Flour).Select(p => p.Code)];

    internal static MillFigures Figures(FlowSheet sheet, MillWheat wheat, MillTuning tuning)
        => tuning.Keys.SequenceEqual(TunePrior.Keys(sheet))
            ? MillFigures.Of(sheet, wheat, tuning.Keys, tuning.Values, TestErrors.Usual)
            : throw new ArgumentException("The mill was tuned on a flow sheet of other passages, cloths or first break: tune it anew on this one.", nameof(tuning));
}

/// <summary>Products taken together under a name, as the streams of a patent.</summary>
/// <param name="Name">What they are called.</param>
/// <param name="Products">Codes of the products.</param>
public sealed record ProductSet(string Name, IReadOnlyList<string> Products);

/// <summary>Products together as forecast.</summary>
/// <param name="Name">What they are called.</param>
/// <param name="YieldPercent">Share of the wheat to first break, both as they flow, per cent.</param>
/// <param name="AshPercentDry">Ash, per cent of dry matter.</param>
/// <param name="ProteinPercentDry">Protein, per cent of dry matter.</param>
public sealed record SetForecast(string Name, Estimate YieldPercent, Estimate AshPercentDry, Estimate ProteinPercentDry);

/// <summary>A passage as forecast.</summary>
/// <param name="Code">Its code.</param>
/// <param name="DryTonnesPerHour">What enters it, t/h of dry matter.</param>
/// <param name="ReleasePercent">Its release, per cent of its feed; null where it has none.</param>
public sealed record PassageForecast(string Code, Estimate DryTonnesPerHour, Estimate? ReleasePercent);
