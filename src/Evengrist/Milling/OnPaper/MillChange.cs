using Evengrist.Milling.Learning;
using Evengrist.Milling.Sheet;
using Evengrist.Milling.Stock;
using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Milling.OnPaper;

/// <summary>What a mill would do otherwise at another setting or with another wheat: on paper, every change ±.</summary>
/// <remarks>What is not known of the mill is the same before and after, so that most of it drops out of a change. The model's own shortfall is taken as a quarter of the change [ours].</remarks>
/// <param name="Now">As it is.</param>
/// <param name="Then">As it would be.</param>
/// <param name="Products">Change of each product and set, in the order of <see cref="MillForecast.Products"/>.</param>
/// <param name="Passages">Change of each passage.</param>
/// <param name="Flour">Change of all flour together.</param>
/// <param name="MoneyPerDay">Change of what the products bring in 24 h, in the currency of the prices; null where none was given.</param>
public sealed record MillChange(
    MillForecast Now, MillForecast Then, IReadOnlyList<SetForecast> Products, IReadOnlyList<PassageForecast> Passages, SetForecast Flour, Estimate? MoneyPerDay)
{
    /// <summary>Shortfall of the model in a change, share of it [ours].</summary>
    internal const double Shortfall = 0.25;

    /// <summary>Compares two settings.</summary>
    /// <param name="now">The flow sheet as it is set.</param>
    /// <param name="then">The flow sheet as it would be set; the same passages, cloths and products.</param>
    /// <param name="wheat">The wheat now.</param>
    /// <param name="otherWheat">The wheat then; the same where null.</param>
    /// <param name="tuning">What is known of the mill.</param>
    /// <param name="sets">Products to take together.</param>
    /// <param name="pricePerTonne">Price of each product by its code; a product that is not there counts nothing. Null for no money.</param>
    /// <exception cref="ArgumentException">A sheet or wheat has faults, or the tuning is of another flow sheet.</exception>
    public static MillChange Of(
        FlowSheet now, FlowSheet then, MillWheat wheat, MillWheat? otherWheat, MillTuning tuning, IReadOnlyList<ProductSet>? sets = null, IReadOnlyDictionary<string, decimal>? pricePerTonne = null)
    {
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(then);
        ArgumentNullException.ThrowIfNull(wheat);
        var (before, after) = (MillForecast.Figures(now, wheat, tuning), MillForecast.Figures(then, otherWheat ?? wheat, tuning));
        SetForecast Of(ProductSet set) => new(set.Name, Between(before.Yield(set.Products), after.Yield(set.Products)), Between(before.Ash(set.Products), after.Ash(set.Products)), Between(before.Protein(set.Products), after.Protein(set.Products)));
        Estimate Between(Figure one, Figure other) => Changed(one.Kind, other.Value - one.Value, other.Gradient - one.Gradient, tuning);
        return new MillChange(
            MillForecast.Of(now, before, tuning, sets), MillForecast.Of(then, after, tuning, sets),
            [.. now.Products.Select(p => Of(new ProductSet(p.Code, [p.Code]))), .. (sets ?? []).Select(Of)],
            [.. now.Passages.Select(p => new PassageForecast(p.Code, Between(before.Load(p.Code), after.Load(p.Code)), before.Release(p.Code) is { } release ? Between(release, after.Release(p.Code)!) : null))],
            Of(new ProductSet("flour", MillForecast.FlourOf(now))),
            pricePerTonne is null ? null : Money(now, before, after, wheat, otherWheat ?? wheat, tuning, pricePerTonne));
    }

    /// <summary>Tonnes in 24 h of one point of yield.</summary>
    internal static double PerPoint(MillWheat wheat) => 24 * wheat.DryTonnesPerHour / (1 - (wheat.MoisturePercent / 100)) / 100;

    private static Estimate Money(FlowSheet sheet, MillFigures before, MillFigures after, MillWheat wheat, MillWheat otherWheat, MillTuning tuning, IReadOnlyDictionary<string, decimal> prices)
    {
        var (value, gradient) = (0.0, Vector<double>.Build.Dense(tuning.Keys.Count));
        foreach (var product in sheet.Products.Where(p => prices.ContainsKey(p.Code)))
        {
            var (one, other) = (before.Yield([product.Code]), after.Yield([product.Code]));
            var (perPoint, otherPerPoint) = (PerPoint(wheat) * (double)prices[product.Code], PerPoint(otherWheat) * (double)prices[product.Code]);
            value += (other.Value * otherPerPoint) - (one.Value * perPoint);
            gradient += (other.Gradient * otherPerPoint) - (one.Gradient * perPoint);
        }

        return Changed(FigureKind.Flow, value, gradient, tuning);
    }

    private static Estimate Changed(FigureKind kind, double change, Vector<double> gradient, MillTuning tuning)
        => new(change, Math.Sqrt(Math.Max(0, gradient * (tuning.Covariance * gradient)) + Math.Pow(tuning.ScatterOf(kind) * Shortfall * change, 2)));
}
