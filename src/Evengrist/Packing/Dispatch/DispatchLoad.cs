using System.Diagnostics.CodeAnalysis;
using NodaTime;

namespace Evengrist.Packing.Dispatch;

/// <summary>One load of one trailer or tanker to one consignee: what is planned, what was scanned onto it, how the trailer was found, its seals, and how it ended. Kept as a paper by number; each act is the next version. Model: docs/model/dispatch.md.</summary>
/// <param name="Number">What it is called; unique; letters, digits and hyphens.</param>
/// <param name="Day">The day it is planned for.</param>
/// <param name="Consignee">Code of the customer's place in the ledger.</param>
public sealed record DispatchLoad(string Number, LocalDate Day, string Consignee)
{
    /// <summary>Kind of its paper.</summary>
    public const string Kind = "dispatch-load";

    private const int LongestNumber = 40, Longest = 120;

    /// <summary>Who hauls it: code of a party that is kept, or a name; may be empty and is then missing from the release record.</summary>
    public string Carrier { get; init; } = "";

    /// <summary>Plate or number of the trailer, tanker or railcar; may be empty until it stands at the ramp.</summary>
    public string Trailer { get; init; } = "";

    /// <summary>The driver's name; may be empty.</summary>
    public string Driver { get; init; } = "";

    /// <summary>Whether it is a tanker for loose flour or feed.</summary>
    public bool IsTanker { get; init; }

    /// <summary>Numbers of the orders it fills; may be empty.</summary>
    public IReadOnlyList<string> Orders { get; init; } = [];

    /// <summary>What is to go on it; empty where nothing was planned.</summary>
    public IReadOnlyList<PlannedFlour> Planned { get; init; } = [];

    /// <summary>What stands on it now, in the order of loading.</summary>
    public IReadOnlyList<LoadedPackage> Packages { get; init; } = [];

    /// <summary>What was taken off again.</summary>
    public IReadOnlyList<UnloadedPackage> Unloaded { get; init; } = [];

    /// <summary>Answers to the check list, the first first; of one point the newest counts.</summary>
    public IReadOnlyList<TrailerAnswer> Answers { get; init; } = [];

    /// <summary>What the trailer carried before; null until somebody has asked.</summary>
    public CarriedBefore? History { get; init; }

    /// <summary>The seals put on; null until they are.</summary>
    public SealRecord? Sealed { get; init; }

    /// <summary>How it left; null until it has.</summary>
    public Departure? Departed { get; init; }

    /// <summary>Why the trailer was turned away; null where it was not.</summary>
    public TurnedAway? Away { get; init; }

    /// <summary>What came back after it had left.</summary>
    public IReadOnlyList<ReturnedPackage> Returned { get; init; } = [];

    /// <summary>How it stands.</summary>
    public LoadStage Stage => Departed is not null ? LoadStage.Departed : Away is not null ? LoadStage.TurnedAway : Sealed is not null ? LoadStage.Sealed
        : Packages.Count > 0 ? LoadStage.Loading : Answers.Count > 0 || History is not null ? LoadStage.AtTheRamp : LoadStage.Planned;

    /// <summary>Whether anything can still be changed of it.</summary>
    public bool IsOpen => Departed is null && Away is null;

    /// <summary>The answer that counts of a point; null where it was not answered.</summary>
    public TrailerAnswer? AnswerOf(string point) => Answers.LastOrDefault(a => a.Point.Equals(point, StringComparison.OrdinalIgnoreCase));

    /// <summary>Whether a point of the check list stands failed.</summary>
    public bool AnswerIsBad() => Answers.GroupBy(a => a.Point, StringComparer.OrdinalIgnoreCase).Any(g => !g.Last().IsGood);

    /// <summary>What is wrong with it, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. Number is { Length: >= 1 and <= LongestNumber } && Number.All(c => char.IsAsciiLetterOrDigit(c) || c == '-') ? Array.Empty<string>() : [$"A load's number has 1 to {LongestNumber} letters, digits and hyphens: “{Number}” has not."],
        .. string.IsNullOrWhiteSpace(Consignee) ? ["Say to which consignee it goes."] : Array.Empty<string>(),
        .. new[] { Carrier, Trailer, Driver }.Concat(Orders).Any(t => t.Length > Longest || t.Any(char.IsControl)) ? [$"Carrier, trailer, driver and order numbers are one line of at most {Longest} characters each."] : Array.Empty<string>(),
        .. Planned.Where(p => string.IsNullOrWhiteSpace(p.Flour) || p.Pallets is < 1 or > PlannedFlour.MostPallets).Select(p => $"A planned flour has a name and 1 to {PlannedFlour.MostPallets} pallets (1 for a tanker); got “{p.Flour}” {p.Pallets}."),
    ];

    /// <summary>It as JSON.</summary>
    public string ToJson() => PackingJson.Write(this);

    /// <summary>Reads one; each fault a sentence.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out DispatchLoad? load, out IReadOnlyList<string> faults) => PackingJson.TryRead(json, l => l.Faults(), out load, out faults);
}
