namespace Evengrist.Streams.Additions;

/// <summary>What comes of a question about additions; a part that was not asked, or has faults, is null.</summary>
public sealed record AdditionsOutcome
{
    /// <summary>Malt.</summary>
    public MaltNeed? Malt { get; init; }

    /// <summary>Gluten, and what its feeder has to give.</summary>
    public (GlutenDose Dose, FeedRate Rate)? Gluten { get; init; }

    /// <summary>Ascorbic acid, as its premix.</summary>
    public AscorbicNeed? Ascorbic { get; init; }

    /// <summary>Enrichment, and what its feeder has to give.</summary>
    public (EnrichmentTable Table, PremixDose Dose, FeedRate Rate)? Enrichment { get; init; }

    /// <summary>The dose a feeder was found to give.</summary>
    public FoundDose? Feeder { get; init; }

    /// <summary>Flour that ran while a feeder stood, t.</summary>
    public double? TonnesWithout { get; init; }

    /// <summary>Ash before something was put in, per cent.</summary>
    public double? AshBefore { get; init; }

    /// <summary>Rework.</summary>
    public ReworkAdvice? Rework { get; init; }

    /// <summary>What is wrong with the parts that were asked, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults { get; init; } = [];
}

/// <summary>What a feeder has to give.</summary>
/// <param name="GramsPerTonne">Dose, g to a tonne of flour.</param>
/// <param name="GramsPerMinute">Rate, g/min; null where the flour's flow is not said.</param>
public sealed record FeedRate(double GramsPerTonne, double? GramsPerMinute)
{
    /// <summary>The rate of a dose.</summary>
    public static FeedRate Of(double gramsPerTonne, double? flourTonnesPerHour) => new(gramsPerTonne, flourTonnesPerHour is { } flow ? Feeder.GramsPerMinute(gramsPerTonne, flow) : null);
}

/// <summary>Malt for a falling number.</summary>
/// <param name="Line">What malt does.</param>
/// <param name="GramsPer100Kg">Malt, g in 100 kg.</param>
/// <param name="StandardUncertainty">One standard uncertainty that comes of the line's slope, g in 100 kg.</param>
/// <param name="Rate">What its feeder has to give.</param>
/// <param name="Remarks">What else has to be known, each a sentence.</param>
public sealed record MaltNeed(MaltLine Line, double GramsPer100Kg, double StandardUncertainty, FeedRate Rate, IReadOnlyList<string> Remarks);

/// <summary>Ascorbic acid, as its premix.</summary>
/// <param name="Rate">What its feeder has to give of the premix.</param>
/// <param name="Remarks">What else has to be known, each a sentence.</param>
public sealed record AscorbicNeed(FeedRate Rate, IReadOnlyList<string> Remarks);

/// <summary>Whether flour may be fed back.</summary>
/// <param name="Against">What stands against it, each a sentence; empty where nothing known here does.</param>
/// <param name="MostPercent">The most of a run that keeps every end and the mill's own rule, per cent.</param>
/// <param name="Values">Each value as asked, and what it comes to.</param>
/// <param name="Remarks">What else has to be known, each a sentence.</param>
public sealed record ReworkAdvice(IReadOnlyList<string> Against, double MostPercent, IReadOnlyList<(ReworkedValue Of, double With)> Values, IReadOnlyList<string> Remarks);
