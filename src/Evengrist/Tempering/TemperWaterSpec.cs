namespace Evengrist.Tempering;

/// <summary>Wheat to be tempered: what it is, what it is to be at first break, and how.</summary>
/// <param name="MoisturePercent">Moisture before water, per cent wet basis; 5 to 30.</param>
/// <param name="AimPercent">Moisture wanted at first break, per cent wet basis; 5 to 30.</param>
public sealed record TemperWaterSpec(double MoisturePercent, double AimPercent)
{
    /// <summary>Most points of moisture one stage of an intensive dampener takes, as read in a trade article (World Grain, Tempering wheat).</summary>
    public const double MostPointsInOneStage = 8;

    /// <summary>One standard uncertainty of a moisture where none is known, points: the middle of what NIR is usually good for [from memory].</summary>
    public const double UsualMoistureUncertainty = 0.15;

    /// <summary>One standard uncertainty of the water let in, per cent of it [ours].</summary>
    public const double UsualWaterUncertaintyPercent = 2;

    /// <summary>Clean wheat as it lies before water, t/h; null where only a mass is asked for. Above 0, at most 1000.</summary>
    public double? TonnesPerHour { get; init; }

    /// <summary>Clean wheat as it lies before water, t; null where only a flow is asked for. Above 0, at most 100 000.</summary>
    public double? Tonnes { get; init; }

    /// <summary>Moisture after each earlier stage, per cent wet basis, in order; the last stage, to the aim, is not among them. At most 3.</summary>
    public IReadOnlyList<double> EarlierStages { get; init; } = [];

    /// <summary>Water lost between the last stage and first break, per cent of the tempered mass; 0 to 5. 0 by default, which allows for none.</summary>
    public double EvaporationPercent { get; init; }

    /// <summary>Temperature of the water, °C, for its litres; null for 1 kg to the litre. 0 to 60.</summary>
    public double? WaterCelsius { get; init; }

    /// <summary>One standard uncertainty of the moisture before water, points; 0 to 2.</summary>
    public double MoistureUncertainty { get; init; } = UsualMoistureUncertainty;

    /// <summary>One standard uncertainty of the water let in, per cent of it; 0 to 50.</summary>
    public double WaterUncertaintyPercent { get; init; } = UsualWaterUncertaintyPercent;

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults()
    {
        (bool Holds, string Otherwise)[] rules =
        [
            (MoisturePercent is >= 5 and <= 30, "The moisture before water lies from 5 to 30 %, wet basis."),
            (AimPercent is >= 5 and <= 30, "The aim at first break lies from 5 to 30 %, wet basis."),
            (TonnesPerHour is not null || Tonnes is not null, "Say how much wheat: tonnes an hour, tonnes, or both."),
            (TonnesPerHour is null or (> 0 and <= 1000), "The flow of wheat lies above 0 and is at most 1000 t/h."),
            (Tonnes is null or (> 0 and <= 100_000), "The mass of wheat lies above 0 and is at most 100,000 t."),
            (EarlierStages.Count <= 3 && EarlierStages.All(s => s is >= 5 and <= 30), "There are at most 3 stages before the last, each to a moisture from 5 to 30 %, wet basis."),
            (EvaporationPercent is >= 0 and <= 5, "The evaporation to first break lies from 0 to 5 % of the tempered mass."),
            (WaterCelsius is null or (>= 0 and <= 60), "The water's temperature lies from 0 to 60 °C."),
            (MoistureUncertainty is >= 0 and <= 2, "The uncertainty of the moisture lies from 0 to 2 points."),
            (WaterUncertaintyPercent is >= 0 and <= 50, "The uncertainty of the water lies from 0 to 50 % of it."),
        ];
        return [.. rules.Where(r => !r.Holds).Select(r => r.Otherwise)];
    }
}
