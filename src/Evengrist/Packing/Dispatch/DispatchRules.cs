using System.Diagnostics.CodeAnalysis;

namespace Evengrist.Packing.Dispatch;

/// <summary>How this mill sends flour out: the check list of a trailer, what may have been carried before, seals, flour that was not released. Kept by version.</summary>
/// <param name="Points">The check list, in its order.</param>
public sealed record DispatchRules(IReadOnlyList<CheckPoint> Points)
{
    /// <summary>Kind of its paper.</summary>
    public const string Kind = "dispatch-rules";

    /// <summary>What the program begins with: the usual points of common practice, from memory; the site's own plan holds.</summary>
    public static DispatchRules Start { get; } = new(
    [
        new("clean", "Floor, walls and doors are clean"), new("dry", "Dry inside, roof and doors tight"), new("odour", "No odour"), new("pests", "No insects, rodents, birds or their traces"),
        new("damage", "No damage, splinters or nails"), new("wash", "Hatches, hoses and outlets clean and capped") { OnlyTankers = true },
    ])
    {
        Previous =
        [
            new("flour", PreviousVerdict.Good), new("wheat flour", PreviousVerdict.Good), new("bagged flour", PreviousVerdict.Good), new("nothing, new or just washed", PreviousVerdict.Good),
            new("sugar", PreviousVerdict.AfterWash), new("starch", PreviousVerdict.AfterWash), new("soy flour", PreviousVerdict.AfterWash), new("feed", PreviousVerdict.Never), new("treated seed", PreviousVerdict.Never),
            new("fertiliser", PreviousVerdict.Never), new("waste", PreviousVerdict.Never), new("chemicals", PreviousVerdict.Never),
        ],
    };

    /// <summary>What may have been carried before; what is not named here keeps a tanker from leaving and is a caution for a trailer of pallets.</summary>
    public IReadOnlyList<PreviousLoad> Previous { get; init; } = [];

    /// <summary>Whether a load leaves only with seals.</summary>
    public bool NeedsSeals { get; init; } = true;

    /// <summary>Whether flour of a lot nobody has decided of is refused; asked about, with a reason, otherwise.</summary>
    public bool RefusesUndecided { get; init; }

    /// <summary>By how much a load may exceed an order it names without a word, per cent of what is ordered, 0 to 20 [0: ours; loose loads rarely meet an order to the kilogram].</summary>
    public decimal OverPercent { get; init; }

    /// <summary>Who may send a load off, by name; empty: every named person.</summary>
    public IReadOnlyList<string> Persons { get; init; } = [];

    /// <summary>The points that a load has.</summary>
    public IReadOnlyList<CheckPoint> PointsOf(DispatchLoad load)
    {
        ArgumentNullException.ThrowIfNull(load);
        return [.. Points.Where(p => load.IsTanker || !p.OnlyTankers)];
    }

    /// <summary>What the mill says of a previous load; null where it does not know it.</summary>
    public PreviousVerdict? Of(string previous)
    {
        ArgumentNullException.ThrowIfNull(previous);
        return Previous.FirstOrDefault(p => p.What.Equals(previous.Trim(), StringComparison.OrdinalIgnoreCase))?.Verdict;
    }

    /// <summary>Whether a person may send a load off.</summary>
    public bool MaySend(string name) => Persons.Count == 0 || Persons.Contains(name.Trim(), StringComparer.OrdinalIgnoreCase);

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. Points.Count == 0 ? ["A check list has a point at least: clean."] : Array.Empty<string>(),
        .. Points.Where(p => string.IsNullOrWhiteSpace(p.Code) || string.IsNullOrWhiteSpace(p.Words)).Select(_ => "A point has a code and words."),
        .. Points.GroupBy(p => p.Code, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1).Select(g => $"The point {g.Key} stands twice."),
        .. Previous.GroupBy(p => p.What.Trim(), StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1 || g.Key.Length == 0).Select(g => g.Key.Length == 0 ? "A previous load has a name." : $"The previous load {g.Key} stands twice."),
        .. OverPercent is >= 0 and <= 20 ? Array.Empty<string>() : [FormattableString.Invariant($"A load may exceed an order by 0 to 20 % without a word; read {OverPercent}.")],
        .. Persons.Any(string.IsNullOrWhiteSpace) ? ["A name in the list is empty: leave it out."] : Array.Empty<string>(),
    ];

    /// <summary>The rules as JSON.</summary>
    public static string Write(DispatchRules rules) => PackingJson.Write(rules);

    /// <summary>Reads rules and checks them; each fault a sentence.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out DispatchRules? rules, out IReadOnlyList<string> faults) => PackingJson.TryRead(json, r => r.Faults(), out rules, out faults);
}

/// <summary>A point of the trailer's check list.</summary>
/// <param name="Code">Its code.</param>
/// <param name="Words">What a person looks for, said as it should be.</param>
public sealed record CheckPoint(string Code, string Words)
{
    /// <summary>Whether it is asked of tankers alone.</summary>
    public bool OnlyTankers { get; init; }
}

/// <summary>A previous load and what the mill says of it.</summary>
/// <param name="What">The load, in the words that are typed.</param>
/// <param name="Verdict">What the mill says.</param>
public sealed record PreviousLoad(string What, PreviousVerdict Verdict);

/// <summary>What may follow a previous load.</summary>
public enum PreviousVerdict
{
    /// <summary>Flour may follow.</summary>
    Good,

    /// <summary>Flour may follow once it was washed, with a ticket.</summary>
    AfterWash,

    /// <summary>Flour may never follow.</summary>
    Never,
}
