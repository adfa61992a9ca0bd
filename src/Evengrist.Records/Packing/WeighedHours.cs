using System.Text.Json;
using Evengrist.Packing.NetContent;
using Evengrist.Quantities;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Records.Packing;

/// <summary>What checkweighers weighed: a paper for each line, product and hour with every package in it, and the figures of its hours by day, which are reckoned from those and only spare reading them.</summary>
public static class WeighedHours
{
    private const string Hours = "weighed-hour", Days = "weighed-day";

    private static readonly JsonSerializerOptions Options = StrictJson.Options();
    private static readonly InstantPattern Hour = InstantPattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH"), Day = InstantPattern.CreateWithInvariantCulture("uuuu-MM-dd"), Month = InstantPattern.CreateWithInvariantCulture("uuuu-MM");

    /// <summary>Keeps hours. What is known already is not kept again: a package that stands in the records and in the file is one.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="hours">The hours of a file.</param>
    /// <param name="by">Who brings them in.</param>
    /// <param name="asked">What was asked about the file and what was answered; empty where nothing was.</param>
    /// <returns>Packages that were new, and those known already.</returns>
    public static (int Added, int Known) Keep(Mill mill, IReadOnlyList<WeighedHour> hours, string by, string asked = "")
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(hours);
        ArgumentException.ThrowIfNullOrWhiteSpace(by);
        var (added, all, papers) = (0, 0, new List<(string, string)>());
        foreach (var hour in hours)
        {
            var (known, both) = Find(mill, hour.Line, hour.Product, hour.From) is { } kept ? (kept.Packages.Count, kept.With(hour)) : (0, hour);
            (added, all) = (added + both.Packages.Count - known, all + hour.Packages.Count);
            if (both.Packages.Count > known)
            {
                papers.Add((Code(hour.Line, hour.Product, Hour.Format(hour.From)), PackedWeights.Write(both, asked)));
            }
        }

        mill.Papers(Hours).KeepEach(papers, (kept, json) => kept.Json != json, by);
        foreach (var month in hours.GroupBy(h => Month.Format(h.From)))
        {
            mill.Papers($"{Days} {month.Key}").KeepEach([.. month.GroupBy(h => (h.Line, h.Product, Day: Day.Format(h.From))).Select(g => (Code(g.Key.Line, g.Key.Product, g.Key.Day), DayOf(mill, g.First())))], (kept, json) => kept.Json != json, by);
        }

        return (added, all - added);
    }

    /// <summary>Every package of an hour; null where none was weighed. Of versions that two people kept at once all stand.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="line">Code of the line.</param>
    /// <param name="product">Code of the product.</param>
    /// <param name="hour">When the hour begins.</param>
    public static WeighedHour? Find(Mill mill, string line, string product, Instant hour)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var (shelf, code) = (mill.Papers(Hours), Code(line, product, Hour.Format(hour)));
        WeighedHour? all = null;
        for (var version = shelf.Newest(code)?.Version ?? 0; version > 0; version--)
        {
            var one = PackedWeights.Read(shelf.Find(code, version)!.Json);
            all = all?.With(one) ?? one;
        }

        return all;
    }

    /// <summary>Figures of the hours that ended within a span, by line and product, the first hour first.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="from">From when.</param>
    /// <param name="until">Until when: an hour that had not ended by then is left out.</param>
    public static IReadOnlyDictionary<(string Line, string Product), IReadOnlyList<HourOfWeights>> Within(Mill mill, Instant from, Instant until)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var months = new SortedSet<string>(StringComparer.Ordinal) { Month.Format(until) };
        for (var at = from; at < until; at += Duration.FromDays(28))
        {
            months.Add(Month.Format(at));
        }

        return months.SelectMany(m => mill.Papers($"{Days} {m}").NewestOfEach()).Select(p => (Parts: p.Code.Split('|'), p.Json)).GroupBy(p => (p.Parts[0], p.Parts[1]))
            .Select(g => (g.Key, Hours: g.SelectMany(p => JsonSerializer.Deserialize<HourOfWeights[]>(p.Json, Options)!).Where(h => h.From >= from && h.From + Duration.FromHours(1) <= until).OrderBy(h => h.From).ToArray()))
            .Where(g => g.Hours.Length > 0).ToDictionary(g => g.Key, g => (IReadOnlyList<HourOfWeights>)g.Hours);
    }

    private static string DayOf(Mill mill, WeighedHour any)
    {
        var midnight = Day.Parse(Day.Format(any.From)).Value;
        return JsonSerializer.Serialize(Enumerable.Range(0, 24).Select(h => Find(mill, any.Line, any.Product, midnight + Duration.FromHours(h))).OfType<WeighedHour>().Select(HourOfWeights.Of).OfType<HourOfWeights>(), Options);
    }

    private static string Code(string line, string product, string when) => $"{line}|{product}|{when}";
}
