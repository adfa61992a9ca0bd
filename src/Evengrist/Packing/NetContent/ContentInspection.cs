using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Packing.NetContent;

/// <summary>An inspection of net content that a named person signed: every weight, the plan, the limits, what was found. Kept by number and never changed. It decides nothing. Model: docs/model/net-content.md.</summary>
/// <param name="Rules">Whose rules.</param>
/// <param name="Product">Code of the product.</param>
/// <param name="LabelGrams">What each package declares, grams.</param>
/// <param name="LotSize">Packages in the lot or batch.</param>
/// <param name="Gross">Gross weights, grams, in the order they were weighed.</param>
/// <param name="TareGrams">Weight of the empty package that is taken off, grams.</param>
/// <param name="SampledBy">Who sampled.</param>
/// <param name="SampledAt">When.</param>
/// <param name="SignedBy">Who signs.</param>
public sealed record ContentInspection(NetRules Rules, string Product, double LabelGrams, int LotSize, IReadOnlyList<double> Gross, double TareGrams, string SampledBy, Instant SampledAt, string SignedBy)
{
    /// <summary>Kind of its paper.</summary>
    public const string Kind = "net-content";

    private static readonly JsonSerializerOptions Options = StrictJson.Options();

    /// <summary>Name of the product in words.</summary>
    public string ProductName { get; init; } = "";

    /// <summary>Whether the label says pounds first.</summary>
    public bool IsInPounds { get; init; }

    /// <summary>The lot in words: its code, the line and the hour.</summary>
    public string Lot { get; init; } = "";

    /// <summary>Gross weights of the second sample, grams; empty where none was taken.</summary>
    public IReadOnlyList<double> Second { get; init; } = [];

    /// <summary>Where the tare comes from, in words.</summary>
    public string TareFrom { get; init; } = "";

    /// <summary>Whether testing spoiled the packages (opened and emptied).</summary>
    public bool Spoils { get; init; }

    /// <summary>Where the weights come from, in words.</summary>
    public string From { get; init; } = "";

    /// <summary>What else was seen.</summary>
    public string Remark { get; init; } = "";

    /// <summary>The label.</summary>
    [System.Text.Json.Serialization.JsonIgnore]
    public NetLabel Label => new(LabelGrams, IsInPounds);

    /// <summary>Net weights of the first sample, grams.</summary>
    [System.Text.Json.Serialization.JsonIgnore]
    public IReadOnlyList<double> Net => [.. Gross.Select(g => g - TareGrams)];

    /// <summary>By the rules of the United States; null where those are not asked.</summary>
    public PackageFinding? American() => Rules == NetRules.US ? PackageCheck.Of(Label, LotSize, Net) : null;

    /// <summary>By the rules of the European Union; null where those are not asked.</summary>
    public BatchFinding? European() => Rules == NetRules.EU ? BatchCheck.Of(Label, LotSize, Net, [.. Second.Select(g => g - TareGrams)], Spoils) : null;

    /// <summary>How many packages the first sample of a lot has.</summary>
    /// <param name="rules">Whose rules.</param>
    /// <param name="lot">Packages in the lot.</param>
    /// <param name="spoils">Whether testing spoils the package.</param>
    public static int SizeOf(NetRules rules, int lot, bool spoils = false) => rules == NetRules.US ? PackagePlan.For(lot).Size : BatchCheck.PlanOf(lot, spoils)?.First ?? lot;

    /// <summary>What is wrong, each a sentence that says what to do; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults()
    {
        string[] first =
        [
            .. Rules is NetRules.US or NetRules.EU ? Array.Empty<string>() : ["Say whose rules hold: US or EU."],
            .. Label.Fault is { } label ? [label] : Array.Empty<string>(),
            .. Rules == NetRules.EU && LabelGrams < TolerableError.LeastGrams ? [$"The table of tolerable errors begins at {TolerableError.LeastGrams} g."] : Array.Empty<string>(),
            .. Rules == NetRules.US && LotSize is < PackagePlan.LeastLot or > PackagePlan.MostLot ? [$"A lot has {PackagePlan.LeastLot} to {PackagePlan.MostLot} packages; got {LotSize}."] : Array.Empty<string>(),
            .. Rules == NetRules.EU && LotSize is < 2 or > BatchPlan.MostBatch ? [$"A batch has 2 to {BatchPlan.MostBatch} packages; got {LotSize}. Judge a larger one in parts."] : Array.Empty<string>(),
            .. double.IsFinite(TareGrams) && TareGrams >= 0 ? Array.Empty<string>() : ["An empty package weighs 0 g or more."],
            .. Gross.Concat(Second).Any(g => !double.IsFinite(g) || g <= TareGrams) ? [FormattableString.Invariant($"A gross weight is above that of the empty package, {TareGrams:0.#} g.")] : Array.Empty<string>(),
            .. string.IsNullOrWhiteSpace(SampledBy) || string.IsNullOrWhiteSpace(SignedBy) ? ["Say who sampled, and who signs."] : Array.Empty<string>(),
        ];
        if (first.Length > 0)
        {
            return first;
        }

        var wanted = SizeOf(Rules, LotSize, Spoils);
        var second = Rules == NetRules.EU ? BatchCheck.PlanOf(LotSize, Spoils)?.Second ?? 0 : 0;
        return
        [
            .. Gross.Count == wanted ? Array.Empty<string>() : [$"Of {LotSize} packages {wanted} are weighed; got {Gross.Count} weights."],
            .. Second.Count == 0 || Second.Count == second ? Array.Empty<string>() : [second == 0 ? "There is no second sample here." : $"The second sample has {second} packages; got {Second.Count}."],
        ];
    }

    /// <summary>What is odd, each a question; empty where nothing is.</summary>
    public IReadOnlyList<string> Questions() =>
        Net.Where(n => n < LabelGrams / 2 || n > LabelGrams * 1.5).ToArray() is { Length: > 0 } odd
            ? [FormattableString.Invariant($"{odd.Length} of {Gross.Count} net weights are below half or above one and a half times the label, such as {odd[0]:0.#} g against {LabelGrams:0.#} g: is the unit right?")] : [];

    /// <summary>As it is kept.</summary>
    public string ToJson() => JsonSerializer.Serialize(this, Options);

    /// <summary>Reads one; each fault a sentence.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out ContentInspection? inspection, out IReadOnlyList<string> faults) =>
        StrictJson.TryRead(json, Options, read => read is null ? ["An inspection is an object; read null."] : read.Faults(), out inspection, out faults);
}
