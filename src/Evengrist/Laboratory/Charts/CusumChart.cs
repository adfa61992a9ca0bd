namespace Evengrist.Laboratory.Charts;

/// <summary>Cumulative sums of what lies above and below a target by more than an allowance. Model: docs/model/control-charts.md.</summary>
/// <param name="Target">The mean that is wanted.</param>
/// <param name="Allowance">K in the unit of the values, at least 0; half the shift to be found, 0.5 σ for one of a standard deviation.</param>
/// <param name="Limit">H in the unit of the values, above 0; 4 or 5 σ are usual.</param>
public sealed record CusumChart(double Target, double Allowance, double Limit)
{
    /// <summary>The sums after each value: S⁺ₜ = max(0, S⁺ₜ₋₁ + xₜ − T − K), S⁻ₜ = max(0, S⁻ₜ₋₁ + T − K − xₜ).</summary>
    /// <param name="values">In the order of time.</param>
    /// <exception cref="InvalidOperationException">Allowance or limit cannot be.</exception>
    public IReadOnlyList<(double Above, double Below)> Of(IReadOnlyList<double> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        if (!(Allowance >= 0 && Limit > 0 && double.IsFinite(Target)))
        {
            throw new InvalidOperationException("Cumulative sums need an allowance of 0 or more and a limit above 0.");
        }

        var (above, below, all) = (0.0, 0.0, new (double, double)[values.Count]);
        for (var t = 0; t < all.Length; t++)
        {
            all[t] = (above, below) = (Math.Max(0, above + values[t] - Target - Allowance), Math.Max(0, below + Target - Allowance - values[t]));
        }

        return all;
    }

    /// <summary>Places, from 0, with a sum beyond the limit.</summary>
    public IReadOnlyList<int> Signals(IReadOnlyList<double> values) => [.. Of(values).Index().Where(s => s.Item.Above > Limit || s.Item.Below > Limit).Select(s => s.Index)];
}
