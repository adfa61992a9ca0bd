using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Plant.Tables;
using Evengrist.Tracing;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Web.Sights.Traces;

/// <summary>The lists of a trace as comma-separated text, UTF-8, units in the header, times with their offset, masses in kilograms.</summary>
public static class TraceCsv
{
    private static readonly ZonedDateTimePattern Time = ZonedDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm:sso<g>", null);

    /// <summary>Packages over the threshold.</summary>
    public static string Of(ReachOutcome reach, DateTimeZone zone)
    {
        ArgumentNullException.ThrowIfNull(reach);
        var text = new CsvText();
        text.Line(["package", "kind", "product", "made", "mass [kg]", "least [kg]", "expected [kg]", "most [kg]", .. reach.Beliefs.Select(b => b.Outflow.Words() + " [kg]"), "chance over threshold [%]", "where now", "left", "on hold"]);
        foreach (var package in reach.Packages)
        {
            text.Line(
            [
                package.Place.Code, package.Place.Kind.Words(), package.Place.Material, Say(package.Made, zone), Kg(package.Mass.Grams), Kg(package.Grams.Least), Kg(package.Grams.Expected), Kg(package.Grams.Most),
                .. package.Grams.Each.Select(Kg), Number(100 * package.ChanceOverThreshold, 1), package.Where?.Code ?? "in stock", package.Left is { } left ? Say(left, zone) : "", package.Hold?.Text ?? "",
            ]);
        }

        return text.ToString();
    }

    /// <summary>Origins.</summary>
    public static string Of(RootsOutcome roots)
    {
        ArgumentNullException.ThrowIfNull(roots);
        var text = new CsvText();
        text.Line(["truck", "origin", "kind", "farm and district", "class", "share expected [%]", "least [kg]", "expected [kg]", "most [kg]", .. roots.Beliefs.Select(b => b.Outflow.Words() + " [%]")]);
        foreach (var root in roots.Roots)
        {
            var grams = Trio.Of([root.Share.Each.Zip(roots.Grams.Each, (share, whole) => share * whole).ToArray()], roots.Beliefs);
            text.Line(
            [
                root.Truck?.Code ?? "", root.Origin.Code, root.Origin.Kind.Words(), TraceWords.Origin(root), root.Truck?.Material ?? root.Origin.Material,
                Number(100 * root.Share.Expected, 6), Kg(grams.Least), Kg(grams.Expected), Kg(grams.Most), .. root.Share.Each.Select(s => Number(100 * s, 6)),
            ]);
        }

        return text.ToString();
    }

    private static string Say(Instant at, DateTimeZone zone) => Time.Format(at.InZone(zone));

    private static string Kg(double grams) => Number(grams / 1000, 3);

    private static string Kg(long grams) => (grams / 1000m).ToString("0.000", CultureInfo.InvariantCulture);

    private static string Number(double value, int decimals) => value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
