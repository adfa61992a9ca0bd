using Evengrist.Streams.Additions;
using Evengrist.Web.Sights.Season;

namespace Evengrist.Web.Sights.Streams;

/// <summary>What is asked about additions, as a person typed it; a part of which nothing was typed is not asked.</summary>
/// <param name="Fields">The fields.</param>
/// <param name="Spec">The question.</param>
/// <param name="Outcome">What comes of it; null where something cannot be read.</param>
public sealed record AdditionsAsk(TypedFields Fields, AdditionsSpec Spec, AdditionsOutcome? Outcome)
{
    /// <summary>Rows for trials with malt.</summary>
    public const int Trials = 5;

    /// <summary>Values of a run that rework can move: key and words.</summary>
    public static IReadOnlyList<(string Key, string Words)> Reworked { get; } = [("protein", "protein, % 14mb"), ("ash", "ash, % 14mb")];

    /// <summary>Reads the fields and answers.</summary>
    public static AdditionsAsk Of(Func<string, string?> typed, EnrichmentTables tables)
    {
        ArgumentNullException.ThrowIfNull(tables);
        var f = new TypedFields(typed);
        var market = f.Text("e-market", tables.Tables.Count > 0 ? tables.Tables[0].Market : "");
        var spec = new AdditionsSpec
        {
            FlourTonnesPerHour = f.Number("flow", "Flour"), Malt = MaltOf(f), Gluten = Any(f, "g-base", "g-wanted", "g-gluten") is [var b, var w, var g] ? new GlutenAsk(b, w, g) : null,
            Ascorbic = Any(f, "a-ppm", "a-content") is [var ppm, var content] ? new AscorbicAsk(ppm, content) : null, Enrichment = EnrichmentOf(f, tables, market), Feeder = FeederOf(f),
            StoodMinutes = f.Number("s-minutes", "The feeder stood"), Ash = Any(f, "h-ash", "h-dose", "h-content") is [var ash, var dose, var own] ? new AshAsk(ash, dose, own) : null, Rework = ReworkOf(f),
        };
        if (f.Faults.Count > 0)
        {
            return new AdditionsAsk(f, spec, null);
        }

        var outcome = AdditionsModel.Of(spec, tables);
        foreach (var fault in outcome.Faults)
        {
            f.Fault(fault);
        }

        return new AdditionsAsk(f, spec, outcome);
    }

    private static MaltAsk? MaltOf(TypedFields f)
    {
        var wanted = f.Number("m-wanted", "Malt, falling number wanted");
        var uncertainty = f.Needed("m-u", "Malt, ± of a falling number", 5);
        (double? Dose, double? Seconds)[] trials = [.. Enumerable.Range(0, Trials).Select(n => (f.Number($"m{n}-dose", $"Malt, trial {n + 1}, malt"), f.Number($"m{n}-seconds", $"Malt, trial {n + 1}, falling number")))];
        foreach (var (n, trial) in trials.Index().Where(t => t.Item.Dose is null != t.Item.Seconds is null))
        {
            f.Fault($"Malt, trial {n + 1}: malt and falling number belong together; one of them is missing.");
        }

        MaltTrial[] whole = [.. trials.Where(t => t is { Dose: not null, Seconds: not null }).Select(t => new MaltTrial(t.Dose!.Value, t.Seconds!.Value))];
        if (wanted is null && whole.Length > 0)
        {
            f.Fault("Malt: the falling number wanted is missing.");
        }

        return wanted is { } seconds ? new MaltAsk(whole, seconds) { UncertaintyShare = uncertainty / 100 } : null;
    }

    private static EnrichmentAsk? EnrichmentOf(TypedFields f, EnrichmentTables tables, string market)
    {
        string[] names = [.. tables.Tables.SelectMany(t => t.Nutrients).Select(n => n.Name).Distinct()];
        var content = Typed("e-c", "of the premix");
        var own = Typed("e-o", "of the flour's own");
        var over = f.Number("e-over", "Overage");
        return content.Count == 0 ? null : new EnrichmentAsk(market, content) { Own = own, OveragePercent = over ?? 0 };

        Dictionary<string, double> Typed(string key, string words) =>
            names.Select(n => (Name: n, Value: f.Number($"{key}:{n}", $"{n}, {words}"))).Where(n => n.Value is not null).ToDictionary(n => n.Name, n => n.Value!.Value);
    }

    private static LossInWeight? FeederOf(TypedFields f)
    {
        var (set, filled, scale, flour) = (f.Number("l-set", "Dose set"), f.Number("l-filled", "Filled in"), f.Needed("l-scale", "± of the hopper's scale", 0.05), f.Needed("l-u", "± of the flour", 0.5));
        return Any(f, "l-from", "l-until", "l-flour") is [var from, var until, var ran]
            ? new LossInWeight(from, until, ran) { SetGramsPerTonne = set, FilledKilograms = filled ?? 0, ScaleUncertainty = scale, FlourUncertaintyShare = flour / 100 } : null;
    }

    private static ReworkFeed? ReworkOf(TypedFields f)
    {
        var (into, of, percent) = (f.Text("r-into", ""), f.Text("r-of", ""), f.Number("r-percent", "Rework, share of the run"));
        var (most, age, oldest) = (f.Needed("r-most", "Rework, most of a run", 5), f.Number("r-age", "Rework, age"), f.Needed("r-oldest", "Rework, oldest", 30));
        ReworkedValue[] values =
        [
            .. from value in Reworked
               let run = f.Number($"r-{value.Key}-run", $"Rework, {value.Words} of the run")
               let rework = f.Number($"r-{value.Key}-rework", $"Rework, {value.Words} of the rework")
               let least = f.Number($"r-{value.Key}-least", $"Rework, {value.Words}, least")
               let highest = f.Number($"r-{value.Key}-most", $"Rework, {value.Words}, most")
               where run is not null && rework is not null
               select new ReworkedValue(value.Words, run.Value, rework.Value) { Least = least, Most = highest },
        ];
        var (allergens, label, enriched) = (List(f.Text("r-allergens", "")), List(f.Text("r-label", "")), f.Text("r-enriched", "") == "yes");
        return percent is not { } share ? null : new ReworkFeed(into, of, share) { MostPercent = most, AgeDays = age ?? 0, MostDays = oldest, Allergens = allergens, LabelAllergens = label, IsEnriched = enriched, Values = values };
    }

    private static string[] List(string text) => text.Split([',', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    // The numbers where any of them was typed, and then all of them have to be; empty where none was.
    private static double[] Any(TypedFields f, params string[] keys)
    {
        var before = f.Faults.Count;
        double?[] numbers = [.. keys.Select(k => f.Number(k, Words[k]))];
        if (numbers.All(n => n is null))
        {
            return [];
        }

        if (f.Faults.Count == before)
        {
            foreach (var (key, _) in keys.Zip(numbers).Where(n => n.Second is null))
            {
                f.Fault($"{Words[key]} is missing; give a number, or clear the part.");
            }
        }

        return numbers.All(n => n is not null) ? [.. numbers.Select(n => n!.Value)] : [];
    }

    private static readonly Dictionary<string, string> Words = new()
    {
        ["g-base"] = "Gluten, protein of the flour", ["g-wanted"] = "Gluten, protein wanted", ["g-gluten"] = "Gluten, protein of the gluten", ["a-ppm"] = "Ascorbic acid, dose", ["a-content"] = "Ascorbic acid, of the premix",
        ["l-from"] = "Feeder, hopper before", ["l-until"] = "Feeder, hopper after", ["l-flour"] = "Feeder, flour that ran", ["h-ash"] = "Ash as read", ["h-dose"] = "Ash, what was put in", ["h-content"] = "Ash of what was put in",
    };
}
