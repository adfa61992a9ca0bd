using System.Globalization;

namespace Evengrist.Web.Sights.Season;

/// <summary>A line of a drawing on which numbers lie, with round numbers marked.</summary>
/// <param name="Low">The number at its beginning.</param>
/// <param name="High">The number at its end.</param>
/// <param name="Step">From one mark to the next: 1, 2 or 5 with noughts.</param>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends.</param>
public sealed record ChartScale(double Low, double High, double Step, double From, double To)
{
    /// <summary>A scale that holds some numbers, with about so many marks.</summary>
    public static ChartScale Of(IEnumerable<double> numbers, double from, double to, int marks = 5)
    {
        ArgumentNullException.ThrowIfNull(numbers);
        double[] all = [.. numbers.Where(double.IsFinite).DefaultIfEmpty(0)];
        var (low, high) = (all.Min(), all.Max());
        var span = Math.Max(high - low, Math.Max(1e-6, 0.02 * Math.Abs(high)));
        var size = Math.Pow(10, Math.Floor(Math.Log10(span / marks)));
        var step = new[] { 1, 2, 5, 10 }.Select(s => s * size).First(s => span / s <= marks || s >= 10 * size);
        low = Math.Floor((low / step) + 1e-9) * step;
        return new ChartScale(low, Math.Max(low + step, Math.Ceiling((high / step) - 1e-9) * step), step, from, to);
    }

    /// <summary>The marks.</summary>
    public IEnumerable<double> Marks => Enumerable.Range(0, (int)Math.Round((High - Low) / Step) + 1).Select(i => Low + (i * Step));

    /// <summary>Where a number lies.</summary>
    public double At(double number) => From + ((To - From) * (number - Low) / (High - Low));

    /// <summary>A mark in words: <c>12,000</c>, <c>0.05</c>.</summary>
    public string Words(double mark) => mark.ToString(Step >= 1 ? "#,0" : "0." + new string('0', (int)Math.Ceiling(-Math.Log10(Step) - 1e-9)), CultureInfo.InvariantCulture);
}
