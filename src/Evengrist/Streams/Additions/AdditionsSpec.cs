using NodaTime;

namespace Evengrist.Streams.Additions;

/// <summary>What is asked about additions to a flour; each part by itself, what is null is not asked. Page: docs/model/additions.md.</summary>
public sealed record AdditionsSpec
{
    /// <summary>Flour past the feeders, t/h; null where no rate is wanted.</summary>
    public double? FlourTonnesPerHour { get; init; }

    /// <summary>Malt for a falling number.</summary>
    public MaltAsk? Malt { get; init; }

    /// <summary>Gluten for a protein.</summary>
    public GlutenAsk? Gluten { get; init; }

    /// <summary>Ascorbic acid.</summary>
    public AscorbicAsk? Ascorbic { get; init; }

    /// <summary>Enrichment premix.</summary>
    public EnrichmentAsk? Enrichment { get; init; }

    /// <summary>A feeder's hopper against the flour.</summary>
    public LossInWeight? Feeder { get; init; }

    /// <summary>Minutes for which a feeder stood while flour ran.</summary>
    public double? StoodMinutes { get; init; }

    /// <summary>Ash read after something was put in.</summary>
    public AshAsk? Ash { get; init; }

    /// <summary>Flour fed back into a run.</summary>
    public ReworkFeed? Rework { get; init; }
}

/// <summary>Malt for a falling number.</summary>
/// <param name="Trials">The flour tested with malt, two or more.</param>
/// <param name="WantedSeconds">Falling number wanted, s.</param>
public sealed record MaltAsk(IReadOnlyList<MaltTrial> Trials, double WantedSeconds)
{
    /// <summary>One standard uncertainty of a falling number, share of itself; 5 % [memory].</summary>
    public double UncertaintyShare { get; init; } = 0.05;
}

/// <summary>Gluten for a protein, all on one basis.</summary>
public sealed record GlutenAsk(double BasePercent, double WantedPercent, double GlutenPercent);

/// <summary>Ascorbic acid.</summary>
/// <param name="Ppm">Wanted, ppm of the flour.</param>
/// <param name="ContentPercent">What of the premix it is, per cent.</param>
public sealed record AscorbicAsk(double Ppm, double ContentPercent);

/// <summary>Enrichment premix.</summary>
/// <param name="Market">The market whose table holds.</param>
/// <param name="ContentPercent">What of the premix each nutrient is, per cent, by name.</param>
public sealed record EnrichmentAsk(string Market, IReadOnlyDictionary<string, double> ContentPercent)
{
    /// <summary>What the flour has of its own, mg/kg, by name; nothing where it is not said.</summary>
    public IReadOnlyDictionary<string, double> Own { get; init; } = new Dictionary<string, double>();

    /// <summary>How much more than the aim is put in, per cent of the aim.</summary>
    public double OveragePercent { get; init; }

    /// <summary>The day the flour is made; null for the newest table.</summary>
    public LocalDate? Day { get; init; }
}

/// <summary>Ash that was read after something was put in.</summary>
/// <param name="AshPercent">As read, per cent.</param>
/// <param name="GramsPerTonne">What was put in, g to a tonne of flour.</param>
/// <param name="AdditionAshPercent">Ash of what was put in, per cent of it.</param>
public sealed record AshAsk(double AshPercent, double GramsPerTonne, double AdditionAshPercent);
