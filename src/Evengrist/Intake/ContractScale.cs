using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Intake;

/// <summary>One scale of a contract: what each step of a recorded factor adds to the price or takes from the mass. Data, never code.</summary>
/// <remarks>
/// A value is carried to the scale's basis and unit, recorded half up at <see cref="RecordedDecimals"/>, then looked up. A version once used never
/// changes; a new table is a new version. Model: docs/model/settlement.md.
/// </remarks>
public sealed record ContractScale
{
    /// <summary>What people call the scale.</summary>
    public required string Code { get; init; }

    /// <summary>From 1.</summary>
    public required int Version { get; init; }

    /// <summary>The property the scale goes by.</summary>
    public required Property Factor { get; init; }

    /// <summary>Unit of the steps; one of the units of the property.</summary>
    public required string Unit { get; init; }

    /// <summary>Basis of the steps; stated for a share of solids.</summary>
    public Basis Basis { get; init; }

    /// <summary>Decimals at which the factor is recorded before the look-up, 0 to 6.</summary>
    public required int RecordedDecimals { get; init; }

    /// <summary>What the steps do.</summary>
    public required ScaleEffect Effect { get; init; }

    /// <summary>Currency of the effects, for a scale that adds to the price; null otherwise.</summary>
    public string? Currency { get; init; }

    /// <summary>What the effects are for, for a scale that adds to the price; none otherwise.</summary>
    public PriceUnit Per { get; init; }

    /// <summary>Steps, each beginning above the one before; at least one.</summary>
    public required IReadOnlyList<ScaleStep> Steps { get; init; }

    /// <summary>Runs of even steps that go on from the last of <see cref="Steps"/>; null for none.</summary>
    public IReadOnlyList<ScaleTier>? Tiers { get; init; }

    /// <summary>What the line is called on the ticket; null for the factor's own name.</summary>
    public string? Line { get; init; }

    /// <summary>The value that counts where the factor was not read, in the scale's unit; null where it must be read.</summary>
    public decimal? NotReadCountsAs { get; init; }

    /// <summary>Which step counts between two.</summary>
    public StepRounding Rounding { get; init; } = StepRounding.Floor;

    /// <summary>What holds below the first step.</summary>
    public Beyond Below { get; init; } = Beyond.NotCovered;

    /// <summary>The last recorded value that the table covers; null where it ends with the beginning of the last step.</summary>
    public decimal? End { get; init; }

    /// <summary>What holds above the end of the table; steps are counted from the last one.</summary>
    public Beyond Above { get; init; } = Beyond.NotCovered;

    /// <summary>The most an effect may be; null for no cap.</summary>
    public decimal? Cap { get; init; }

    /// <summary>The least an effect may be; null for no floor.</summary>
    public decimal? Floor { get; init; }

    /// <summary>A recorded value above this is not taken at all; null for no such limit.</summary>
    public decimal? RejectAbove { get; init; }

    /// <summary>A recorded value below this is not taken at all; null for no such limit.</summary>
    public decimal? RejectBelow { get; init; }

    /// <summary>First milling day on which the version is in force; null for always.</summary>
    public LocalDate? From { get; init; }

    /// <summary>Last milling day on which it is in force; null for no end.</summary>
    public LocalDate? Until { get; init; }

    /// <summary>Where the table comes from.</summary>
    public string Source { get; init; } = "";

    /// <summary><c>KC-HRW-PRO v1</c>.</summary>
    public string Title => $"{Code} v{Version}";

    /// <summary>Every step, the tiers laid out: what is printed and looked up.</summary>
    public IReadOnlyList<ScaleStep> Table => Tiers is { Count: > 0 } ? ScaleTier.LaidOut(Steps, Tiers) : Steps;

    /// <summary>Whether the version is in force on a milling day.</summary>
    public bool InForceOn(LocalDate day) => (From is not { } from || day >= from) && (Until is not { } until || day <= until);

    /// <summary>What the scale says of a value in its own unit and basis.</summary>
    /// <param name="value">The value as found, not rounded.</param>
    public ScaleAnswer Ask(decimal value) => ScaleLookup.Ask(this, value);

    /// <summary>Every fault of the scale as data, each a sentence; empty where there is none.</summary>
    public IReadOnlyList<string> Faults() => ScaleCheck.Of(this).Select(f => $"Scale {Title}: {f}").ToList();
}
