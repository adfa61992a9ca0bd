using Evengrist.Quantities;

namespace Evengrist.Intake.Deciding;

/// <summary>All that is known of a load when it stands on the scale.</summary>
/// <param name="Findings">What the sample showed, each property at most once.</param>
public sealed record LoadToDecide(IReadOnlyList<Finding> Findings)
{
    /// <summary>What was smelt or seen, in the words of <see cref="LoadSigns"/>; null where nobody looked.</summary>
    public IReadOnlyList<string>? Seen { get; init; }

    /// <summary>What the trailer carried before; null where nobody asked.</summary>
    public TrailerHistory? Trailer { get; init; }

    /// <summary>The contract it would be settled under; null for none.</summary>
    public ContractTerms? Contract { get; init; }

    /// <summary>Every fault, each a sentence; empty where there is none.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. Findings.Select(f => f.Fault).OfType<string>(),
        .. Findings.GroupBy(f => f.What).Where(g => g.Count() > 1).Select(g => $"{g.Key} is given {g.Count()} times: give it once."),
        .. (Seen ?? []).Where(s => LoadSigns.Find(s) is null).Select(s => $"\"{s}\" is nothing that can be seen on a load. Choose from: {string.Join(", ", LoadSigns.All.Select(k => k.Words))}."),
        .. Trailer?.Faults() ?? [],
    ];

    internal Finding? Find(Ledger.Property what) => Findings.FirstOrDefault(f => f.What == what);

    internal Basis AsReceived => Find(Ledger.Property.Moisture) is { Value: > 0 and < 100 } moisture ? Basis.At(moisture.Value) : default;
}
