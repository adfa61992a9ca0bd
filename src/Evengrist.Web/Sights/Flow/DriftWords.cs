using System.Globalization;
using Evengrist.Milling.Drift;
using Evengrist.Milling.OnPaper;
using Evengrist.Milling.Sheet;
using Evengrist.Plant.Answers;
using Evengrist.Web.Sights.Season;
using NodaTime;

namespace Evengrist.Web.Sights.Flow;

/// <summary>Drift in words and lines.</summary>
public static class DriftWords
{
    /// <summary>A cause, a torn cloth by its opening.</summary>
    public static string Cause(DriftCause cause, FlowSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(cause);
        ArgumentNullException.ThrowIfNull(sheet);
        return cause.Kind is DriftKind.Torn && sheet.Passages.FirstOrDefault(p => p.Code == cause.Passage) is { } passage && passage.Cloths.ElementAtOrDefault(cause.Outlet - (passage.Lifted.Count > 0 ? 1 : 0)) is { } cloth
            ? string.Create(CultureInfo.InvariantCulture, $"cloth of {cloth.ApertureMicrometres:0.#} µm at {cause.Passage} torn, or its frame leaks") : MillDriftAnswer.Words(cause);
    }

    /// <summary>How likely a cause is: "over 99 in 100".</summary>
    public static string Likely(double probability) => probability > 0.99 ? "over 99 in 100" : probability < 0.01 ? "under 1 in 100" : string.Create(CultureInfo.InvariantCulture, $"{100 * probability:0} in 100");

    /// <summary>What it costs a day: money where prices are given, else tonnes of flour.</summary>
    /// <param name="tonnes">Flour lost in 24 h at the same ash, t.</param>
    /// <param name="prices">What flour and feed bring; null for none.</param>
    /// <param name="currency">The mill's currency.</param>
    public static string Cost(Estimate tonnes, DriftPrices? prices, string currency)
    {
        ArgumentNullException.ThrowIfNull(tonnes);
        var over = prices is null ? 1 : (double)(prices.Flour - prices.Feed);
        var value = TrialWords.Value(new Estimate(tonnes.Value * over, tonnes.Uncertainty * over), prices is null ? 2 : 0);
        return prices is null ? $"{value} t of flour" : $"{value} {currency}";
    }

    /// <summary>A figure with its own band over days since its first test, to be drawn.</summary>
    public static IReadOnlyList<ChartLine> Lines(DriftSeries series)
    {
        ArgumentNullException.ThrowIfNull(series);
        (double X, double Y)[] own = [.. series.Points.Select(p => (Days(series, p.At), p.Own))];
        return
        [
            new ChartLine("own", own) { Spread = [.. own.Select(_ => 3 * series.OwnSpread)] },
            new ChartLine("measured", [.. series.Points.Select(p => (Days(series, p.At), p.Measured))]) { IsDots = true },
        ];
    }

    /// <summary>The day of a place along the drawing: "12 Jan".</summary>
    public static string Day(DriftSeries series, double days, DateTimeZone zone)
    {
        ArgumentNullException.ThrowIfNull(series);
        return (series.Points[0].At + Duration.FromDays(days)).InZone(zone).Date.ToString("d MMM", CultureInfo.InvariantCulture);
    }

    /// <summary>Days of the marks below a drawing: about five tests, evenly.</summary>
    public static IReadOnlyList<double> Marks(DriftSeries series)
    {
        ArgumentNullException.ThrowIfNull(series);
        var step = Math.Max(1, (series.Points.Count + 4) / 5);
        return [.. series.Points.Where((_, i) => i % step == 0).Select(p => Days(series, p.At))];
    }

    private static double Days(DriftSeries series, Instant at) => (at - series.Points[0].At).TotalDays;
}
