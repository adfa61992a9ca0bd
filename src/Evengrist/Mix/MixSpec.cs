using Evengrist.Intake.Deciding;

namespace Evengrist.Mix;

/// <summary>What a mix is wanted for: bins offered, limits, gates. Shares are of the mass as it lies; they sum to 1.</summary>
/// <remarks>Model: docs/model/mix.md. What is wrong with it is found by <see cref="MixSpecCheck"/>.</remarks>
public sealed record MixSpec
{
    /// <summary>Bins offered, each code once.</summary>
    public required IReadOnlyList<MixBin> Bins { get; init; }

    /// <summary>Limits of the wheat and of the flour.</summary>
    public IReadOnlyList<MixLimit> Limits { get; init; } = [];

    /// <summary>Shares of classes.</summary>
    public IReadOnlyList<ClassSpan> Classes { get; init; } = [];

    /// <summary>How the flour follows from the wheat; one for each property that a limit of the flour speaks of.</summary>
    public IReadOnlyList<FlourRelation> Relations { get; init; } = [];

    /// <summary>What gates and feeders can be set to.</summary>
    public GateRules Gates { get; init; } = new();

    /// <summary>Wheat through all gates together, t/h; null where only shares matter.</summary>
    public double? RateTonnesPerHour { get; init; }

    /// <summary>How long the mix is to run, h; null where stocks do not matter.</summary>
    public double? Hours { get; init; }

    /// <summary>Limits of the market on wheat; a bin that itself lies above one is refused unless the market's switch for mixing down is on.</summary>
    public IReadOnlyList<MarketLimit> Market { get; init; } = [];

    /// <summary>The mix as it used to be set, share by bin; null where there is none.</summary>
    public IReadOnlyDictionary<string, double>? Habit { get; init; }

    /// <summary>Currency of the costs.</summary>
    public string Currency { get; init; } = "USD";

    /// <summary>Whether any bin carries a value to the year, so that the year's cost is what is kept least.</summary>
    public bool ByYear => Bins.Any(b => b.YearValuePerTonne is not null);

    /// <summary>Step of the gates as a share of the mix; null where they move freely.</summary>
    public double? StepShare => Gates.StepPercent / 100 ?? Gates.StepTonnesPerHour / RateTonnesPerHour;

    /// <summary>Least share of an open gate, 0 where there is none.</summary>
    public double LeastOpen => Math.Max(Gates.LeastOpenShare ?? 0, Gates.LeastTonnesPerHour / RateTonnesPerHour ?? 0);

    /// <summary>Most share of a bin: its own, the feeder's, and what it can give in the time.</summary>
    public double MostOf(MixBin bin)
    {
        ArgumentNullException.ThrowIfNull(bin);
        return Math.Min(Math.Min(bin.MostShare, Gates.MostTonnesPerHour / RateTonnesPerHour ?? 1), bin.Tonnes / (RateTonnesPerHour * Hours) ?? 1);
    }
}
