using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Season;
using Evengrist.Season.Bands;

namespace Evengrist.Web.Sights.Season;

/// <summary>Bands of a harvest as a person asks for them.</summary>
/// <param name="Fields">The fields.</param>
/// <param name="Spec">The harvest; null where something cannot be.</param>
/// <param name="Season">The year without it.</param>
/// <param name="Bins">The bins at hand with their free room.</param>
/// <param name="EndValue">What a t of it left at the end is worth.</param>
/// <param name="Trouble">What a band more has to save to be worth its trouble, money a year.</param>
public sealed record BandsAsk(TypedFields Fields, BandSpec? Spec, SeasonSpec Season, IReadOnlyList<SeasonHome> Bins, double EndValue, double Trouble)
{
    /// <summary>What is asked of each part of the harvest: key, words, unit.</summary>
    public static IReadOnlyList<(string Key, string Words, string Unit)> PartFields { get; } =
    [
        ("t", "tonnes", "t"), ("p", "protein", "% 12mb"), ("ps", "± truck to truck", "points"), ("f", "falling number", "s"), ("fs", "± truck to truck", "s"), ("w", "test weight", "kg/hL"), ("m", "moisture", "%"),
    ];

    private const double MostBands = 6, UsualReading = 0.25, UsualFallingReading = 15;
    private const int MostBins = 20;

    /// <summary>Reads the fields.</summary>
    /// <param name="year">The year into which the harvest comes.</param>
    /// <param name="wheatClass">Its class.</param>
    /// <param name="typed">What was typed, by field.</param>
    /// <param name="ticked">The bins that were ticked; null where the form was not sent.</param>
    public static BandsAsk Of(HarvestYear year, string wheatClass, Func<string, string?> typed, IReadOnlyCollection<string>? ticked)
    {
        ArgumentNullException.ThrowIfNull(year);
        var fields = new TypedFields(typed);
        var parts = year.Arrivals.Where(a => a.WheatClass == wheatClass).Index().Select(a => Part(fields, a.Index, a.Item.Code, a.Item.Tonnes, a.Item.MoisturePercent, Evengrist.Season.Terms.QualityTerms.Of(a.Item.Quality), year, wheatClass))
            .Append(Part(fields, -1, fields.Text("name", ""), null, 12, SeasonQuality.Unknown, year, wheatClass)).OfType<HarvestPart>().ToArray();
        SeasonHome[] bins = [.. year.Spec.Homes.Where(h => ticked?.Contains(h.Code) ?? !year.Lies.ContainsKey(h.Code)).Select(h => h with { CapacityTonnes = h.CapacityTonnes - year.Lies.GetValueOrDefault(h.Code).Tonnes })];
        if (bins.Length == 0)
        {
            fields.Fault("Bins: none is ticked; tick the ones this harvest can have.");
        }

        if (bins.Length > MostBins)
        {
            fields.Fault($"Bins: {bins.Length} are ticked; tick at most {MostBins}.");
        }

        string[] own = [.. year.Arrivals.Where(a => a.WheatClass == wheatClass).Select(a => a.Code)];
        var season = year.Spec with { Wheats = [.. year.Spec.Wheats.Where(w => !own.Contains(w.Code))] };
        var most = fields.Needed("most", "Most bands", Math.Min(MostBands, Math.Max(1, bins.Length)));
        var edge = fields.Number("edge", "Edge of falling number");
        var spec = new BandSpec(wheatClass, parts, (int)Math.Clamp(Math.Min(most, bins.Length), int.MinValue, int.MaxValue))
        {
            ReadingSpread = fields.Needed("reading", "A protein reading may be off by", UsualReading), Step = fields.Needed("step", "Edges every", 0.1),
            FallingNumberEdges = edge is { } at ? [at] : [], FallingNumberReadingSpread = fields.Needed("freading", "A falling number may be off by", UsualFallingReading), Arriving = Arriving(year, own),
        };
        var trouble = fields.Needed("trouble", "A band more has to save", 0);
        if (most < 1)
        {
            fields.Fault(string.Create(CultureInfo.InvariantCulture, $"Most bands: it is {most:0.##}; at least 1 is needed."));
        }

        if (trouble < 0)
        {
            fields.Fault("A band more has to save: 0 or more.");
        }

        if (fields.Faults.Count == 0)
        {
            foreach (var fault in BandFaults.Of(spec, season))
            {
                fields.Fault($"{char.ToUpperInvariant(fault.Where[0])}{fault.Where[1..]}: {fault.What}");
            }
        }

        return new BandsAsk(fields, fields.Faults.Count == 0 ? spec : null, season, bins, year.Terms.EndWorths.FirstOrDefault(w => w.WheatClass == wheatClass)?.PerTonne ?? 0, trouble);
    }

    /// <summary>The name of a field of a part of the harvest; −1 is the part that is typed anew.</summary>
    public static string Key(string field, int part) => $"{field}:{(part < 0 ? "new" : part.ToString(CultureInfo.InvariantCulture))}";

    // A property that is not given is the usual one of the class, as everywhere in the plan.
    private static HarvestPart? Part(TypedFields fields, int n, string name, double? tonnes, double moisture, SeasonQuality known, HarvestYear year, string wheatClass)
    {
        double? Value(string key, string words, double? otherwise) => fields.Number(Key(key, n), $"{(name.Length > 0 ? name : "Another district")}, {words}", otherwise);
        double? Known(Property what, bool spread = false) => known.TryGet(what, out var value) ? spread ? value.Spread : value.Value : null;
        var (t, p, ps) = (Value("t", "tonnes", tonnes), Value("p", "protein", Known(Property.Protein)), Value("ps", "spread of protein", Known(Property.Protein, true)));
        var (f, fs, w, m) = (Value("f", "falling number", Known(Property.FallingNumber)), Value("fs", "spread of falling number", Known(Property.FallingNumber, true)), Value("w", "test weight", Known(Property.TestWeight)), Value("m", "moisture", moisture));
        if (t is null or 0)
        {
            return null;
        }

        var quality = new SeasonQuality(known.Values.Where(v => v.Key is not (Property.Protein or Property.FallingNumber or Property.TestWeight)).ToDictionary());
        if (p is { } protein)
        {
            quality = quality.With(Property.Protein, new SeasonValue(protein, ps ?? 0, Basis.At12));
        }

        if (f is { } falling)
        {
            quality = quality.With(Property.FallingNumber, new SeasonValue(falling, fs ?? 0));
        }

        if (w is { } weight)
        {
            quality = quality.With(Property.TestWeight, new SeasonValue(weight));
        }

        return new HarvestPart(name.Length > 0 ? name : "another", t.Value, m ?? 12, year.Terms.Seen(new SeasonWheat("part", wheatClass, 0, m ?? 12, quality)).Quality);
    }

    private static double[] Arriving(HarvestYear year, string[] own)
    {
        var deliveries = year.Spec.Wheats.Where(w => own.Contains(w.Code)).SelectMany(w => w.Deliveries).Where(d => d.Tonnes > 0).ToLookup(d => d.Period, d => d.Tonnes);
        var all = deliveries.Sum(d => d.Sum());
        return all <= 0 ? [] : [.. Enumerable.Range(0, deliveries.Max(d => d.Key) + 1).Select(t => deliveries[t].Sum() / all)];
    }
}
