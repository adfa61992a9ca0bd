using System.Diagnostics.CodeAnalysis;
using Evengrist.Laboratory.Conformity;

namespace Evengrist.Laboratory.Lots;

/// <summary>What makes a lot in this mill, what readings speak for it, and who may release it. Kept by version.</summary>
/// <param name="PartsOfDay">Into how many equal parts the milling day is cut, 1 to 24: the flour of one kind packed within one part is a lot.</param>
/// <param name="LagMinutes">How long flour takes from the rolls into its package, the mill's own figure, minutes from 0 to 1440: readings on a mill unit speak for what was packed so much later.</param>
/// <param name="Persons">Who may release, hold, send to rework or downgrade, by name.</param>
public sealed record ReleaseRules(int PartsOfDay, int LagMinutes, IReadOnlyList<string> Persons)
{
    /// <summary>The kind of its paper.</summary>
    public const string Kind = "release-rules";

    /// <summary>What the program begins with: one lot for each flour and milling day, no lag, and nobody who may release.</summary>
    public static ReleaseRules Start { get; } = new(1, 0, []);

    /// <summary>What is packed into lots, as the packages' material; all of it where empty.</summary>
    public IReadOnlyList<string> Products { get; init; } = [];

    /// <summary>Methods of readings on a mill unit that are of its flour, as readings name them; all where empty. Readings of single streams are not of the flour.</summary>
    public IReadOnlyList<string> UnitMethods { get; init; } = [];

    /// <summary>The chance inside from which on release is advised.</summary>
    public double Policy { get; init; } = ConformitySpec.UsualPolicy;

    /// <summary>Whether a person may decide of lots; case and outer blanks do not matter.</summary>
    public bool MayDecide(string name) => Persons.Any(p => p.Trim().Equals(name.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>What is said to one who may not.</summary>
    /// <param name="name">The person.</param>
    /// <param name="act">What was wanted: <c>decide of lots</c>.</param>
    public string Refusal(string name, string act)
    {
        ArgumentNullException.ThrowIfNull(name);
        return $"{name.Trim()} is not among those who may {act}: {(Persons.Count == 0 ? "nobody yet, keep the release rules first" : string.Join(", ", Persons))}.";
    }

    /// <summary>What is wrong, each a sentence that says what to do; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. PartsOfDay is >= 1 and <= 24 ? Array.Empty<string>() : [$"A milling day is cut into 1 to 24 parts; got {PartsOfDay}."],
        .. LagMinutes is >= 0 and <= 1440 ? Array.Empty<string>() : [$"The lag from the rolls to the package lies from 0 to 1440 minutes; got {LagMinutes}."],
        .. Policy is > 0.5 and < 1 ? Array.Empty<string>() : ["The chance from which on release is advised lies above 0.5 and below 1."],
        .. Persons.Concat(Products).Concat(UnitMethods).Any(string.IsNullOrWhiteSpace) ? ["A name in a list is empty: leave it out."] : Array.Empty<string>(),
    ];

    /// <summary>The rules as JSON.</summary>
    public static string Write(ReleaseRules rules) => LabJson.Write(rules);

    /// <summary>Reads rules and checks them; each fault a sentence.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out ReleaseRules? rules, out IReadOnlyList<string> faults) =>
        LabJson.TryRead(json, read => read.Faults(), out rules, out faults, "Release rules are an object with partsOfDay, lagMinutes and persons; read null.");
}
