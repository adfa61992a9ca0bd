namespace Evengrist.Laboratory.Calibration;

/// <summary>Errors by the number of factors.</summary>
/// <param name="Rmse">√(mean of squared errors) with 0, 1, 2 … factors, unit of the property.</param>
/// <param name="StandardErrors">One standard error of each: standard deviation of the errors over √n.</param>
public sealed record ErrorCurve(IReadOnlyList<double> Rmse, IReadOnlyList<double> StandardErrors)
{
    /// <summary>From what was foretold.</summary>
    /// <param name="foretold">Of each sample the value with 0, 1, 2 … factors.</param>
    /// <param name="property">Reference of each.</param>
    public static ErrorCurve Of(IReadOnlyList<IReadOnlyList<double>> foretold, IReadOnlyList<double> property)
    {
        ArgumentNullException.ThrowIfNull(foretold);
        ArgumentNullException.ThrowIfNull(property);
        ErrorSummary[] all = [.. Enumerable.Range(0, foretold[0].Count).Select(a => ErrorSummary.Of(property, [.. foretold.Select(f => f[a])]))];
        return new([.. all.Select(e => e.Rmse)], [.. all.Select(e => e.Deviation / Math.Sqrt(e.Count))]);
    }

    /// <summary>The number of factors by a rule.</summary>
    public int Choose(FactorChoice choice)
    {
        var least = Enumerable.Range(0, Rmse.Count).MinBy(a => Rmse[a]);
        return choice switch
        {
            FactorChoice.OneStandardError => Enumerable.Range(0, Rmse.Count).First(a => a == least || Rmse[a] < Rmse[least] + StandardErrors[least]),
            FactorChoice.FirstMinimum => Enumerable.Range(0, Rmse.Count).First(a => a == Rmse.Count - 1 || Rmse[a + 1] > Rmse[a]),
            FactorChoice.Least => least,
            _ => throw new ArgumentOutOfRangeException(nameof(choice), choice, "No such rule."),
        };
    }
}
