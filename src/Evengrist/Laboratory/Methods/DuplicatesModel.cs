using System.Globalization;

namespace Evengrist.Laboratory.Methods;

/// <summary>Judges repeated results of one test under repeatability conditions [ISO 5725-6, from memory]. See docs/model/methods.md.</summary>
public static class DuplicatesModel
{
    /// <summary>Most that four results may differ, in repeatability standard deviations [ISO 5725-6, from memory].</summary>
    public const decimal FourFactor = 3.6m;

    /// <summary>What the results come to: two within r their mean; else two more, four within 3.6 s_r their mean, else their median.</summary>
    /// <param name="values">In the unit of the method, one or more.</param>
    /// <param name="repeatability">r of the method; null where it is not filled.</param>
    /// <exception cref="ArgumentException">There is no value.</exception>
    public static DuplicateOutcome Judge(IReadOnlyList<decimal> values, PrecisionLimit? repeatability)
    {
        ArgumentNullException.ThrowIfNull(values);
        if (values.Count == 0)
        {
            throw new ArgumentException("There is no value to judge.", nameof(values));
        }

        if (values.Count == 1)
        {
            return new SingleResult(values[0], "One value alone; no duplicate was made.");
        }

        var (mean, range) = (values.Average(), values.Max() - values.Min());
        if (repeatability is null || values.Count > 4)
        {
            return new NotJudged(mean, range, repeatability is null ? "Not judged: r of the method is not filled in." : "Not judged: the rule ends at four values.");
        }

        var r = repeatability.At(mean);
        if (values.Count == 4)
        {
            var most = FourFactor * repeatability.StandardDeviationAt(mean);
            var sorted = values.Order().ToArray();
            return range <= most
                ? new ResultsAgree(mean, range, most, $"Four values within {N(most)}: their mean stands.")
                : new MedianTaken((sorted[1] + sorted[2]) / 2, range, most, $"Four values differ by {N(range)}, more than {N(most)}: their median stands. Find out why.");
        }

        return range <= r
            ? new ResultsAgree(mean, range, r, $"They differ by {N(range)}, within r = {N(r)}: their mean stands.")
            : new MoreNeeded(4 - values.Count, range, r, $"They differ by {N(range)}, more than r = {N(r)}: make {(values.Count == 2 ? "two" : "one")} more.");
    }

    private static string N(decimal value) => value.ToString("0.####", CultureInfo.InvariantCulture);
}
