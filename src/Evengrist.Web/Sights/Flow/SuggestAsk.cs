using System.Globalization;
using Evengrist.Milling.Learning;
using Evengrist.Milling.Suggesting;
using Evengrist.Plant.Cases;

namespace Evengrist.Web.Sights.Flow;

/// <summary>A wish for moves of a mill unit, as a person typed it; wheat, tests, prices and streams as on a trial.</summary>
public sealed class SuggestAsk
{
    private readonly PosedSuggest? posed;

    /// <summary>Reads the fields.</summary>
    /// <param name="basics">Wheat, tests, prices and streams.</param>
    public SuggestAsk(TrialAsk basics)
    {
        ArgumentNullException.ThrowIfNull(basics);
        Basics = basics;
        var fields = basics.Fields;
        IsAsked = fields.Has("what");
        var kind = Kinds.FirstOrDefault(k => $"{k.Kind}" == fields.Text("what", "Yield")).Kind;
        var raise = fields.Text("way", "up") != "down";
        var by = fields.Number("by", "Amount", IsAsked ? null : 0.3);
        var of = fields.Text("of", "all");
        var passage = fields.Text("passage", "");
        IReadOnlyList<string> streams = of == "together" ? [.. basics.Sets.SelectMany(s => s.Products)] : [];
        if (of == "together" && streams.Count == 0 && fields.Faults.Count == 0)
        {
            fields.Fault("Name the streams that are meant under “Streams to look at together”, or wish it of all flour.");
        }

        List<PosedKept> keep = [];
        foreach (var row in KeepRow.All)
        {
            var (fall, rise) = (Allowed(row.Fall, row), Allowed(row.Rise, row));
            if (fall is not null || rise is not null)
            {
                keep.Add(new PosedKept(row.Kind) { Products = row.AllFlour ? [] : streams, LeastChange = -fall, MostChange = rise });
            }
        }

        var usual = new MoveRules();
        double Rule(string key, string words, double otherwise) => fields.Needed(key, words, otherwise);
        var rules = usual with
        {
            Most = (int)Math.Clamp(Math.Round(Rule("most", "Most moves", usual.Most)), -1, 99), GapStepMicrometres = Rule("step", "Step of a gap", usual.GapStepMicrometres), MostGapPercent = Rule("gap-most", "Most of a gap", usual.MostGapPercent),
            LeastGapMicrometres = Rule("least", "Least gap", usual.LeastGapMicrometres), AirStepMetresPerSecond = Rule("air-step", "Step of air", usual.AirStepMetresPerSecond), FlowStepPercent = Rule("flow-step", "Step of the flow of wheat", usual.FlowStepPercent),
            MostLoadRisePercent = Rule("load-most", "Rise of a load", usual.MostLoadRisePercent), ClothsOnHand = Openings(fields.Text("on-hand", "")), Leave = Words(fields.Text("leave", "")),
        };
        var sure = fields.Number("sure", "Chance");
        posed = new PosedSuggest(new PosedWish(kind, raise) { By = by, Products = kind is WishKind.MoneyPerDay ? [] : kind is WishKind.Load ? passage.Length > 0 ? [passage] : [] : streams }) { Keep = keep, Rules = rules, Sure = sure / 100 };
        if (IsAsked && fields.Faults.Count == 0)
        {
            foreach (var fault in Spec(MillTuning.None(basics.Sheet))!.Faults())
            {
                fields.Fault(fault);
            }
        }

        double? Allowed(string key, KeepRow row)
        {
            var amount = fields.Number(key, row.Label, IsAsked || key != KeepRow.All[0].Rise ? null : 0);
            if (amount < 0)
            {
                fields.Fault($"{row.Label}: by how much it may change is 0 or more; read “{fields[key]}”.");
            }

            return amount;
        }
    }

    /// <summary>Figures that can be wished for, in words.</summary>
    public static IReadOnlyList<(WishKind Kind, string Words)> Kinds { get; } =
        [(WishKind.Yield, "yield"), (WishKind.Ash, "ash"), (WishKind.Protein, "protein"), (WishKind.DamagedStarch, "damaged starch"), (WishKind.MoneyPerDay, "money in 24 h"), (WishKind.Load, "load of a passage")];

    /// <summary>Wheat, tests, prices and streams.</summary>
    public TrialAsk Basics { get; }

    /// <summary>Whether the form was sent.</summary>
    public bool IsAsked { get; }

    /// <summary>The question; null where something cannot be read.</summary>
    /// <param name="tuning">What is known of the mill.</param>
    public SuggestSpec? Spec(MillTuning tuning) => Basics.Wheat is { } wheat ? posed!.Of(Basics.Sheet, wheat, tuning, TrialWords.Shown, Basics.Prices) : null;

    private double[] Openings(string text)
    {
        var read = Words(text).Select(w => (Word: w, Number: double.TryParse(w, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var n) ? n : double.NaN)).ToArray();
        foreach (var (word, _) in read.Where(r => double.IsNaN(r.Number)))
        {
            Basics.Fields.Fault($"Cloths on hand: openings in µm such as 132 140 are needed; read “{word}”.");
        }

        return [.. read.Select(r => r.Number)];
    }

    private static string[] Words(string text) => text.Split((char[])[' ', ',', ';', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries);
}

/// <summary>A figure that can be asked to stay.</summary>
/// <param name="Key">Its part of a field's name.</param>
/// <param name="Label">What it is called.</param>
/// <param name="Kind">Which figure.</param>
/// <param name="AllFlour">Whether it is of all flour; else of the streams of the wish.</param>
/// <param name="Unit">Unit of its change.</param>
public sealed record KeepRow(string Key, string Label, WishKind Kind, bool AllFlour, string Unit)
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<KeepRow> All { get; } =
    [
        new("ash", "Ash of the streams wished of", WishKind.Ash, false, "%, 14mb"), new("yield", "Yield of the streams wished of", WishKind.Yield, false, "points"), new("protein", "Protein of the streams wished of", WishKind.Protein, false, "%, 14mb"),
        new("all-ash", "Ash of all flour", WishKind.Ash, true, "%, 14mb"), new("all-yield", "Yield of all flour", WishKind.Yield, true, "points"), new("all-damage", "Damaged starch of all flour", WishKind.DamagedStarch, true, "% of dry matter"),
    ];

    /// <summary>Field for what it may fall by.</summary>
    public string Fall => $"keep-{Key}-fall";

    /// <summary>Field for what it may rise by.</summary>
    public string Rise => $"keep-{Key}-rise";
}
