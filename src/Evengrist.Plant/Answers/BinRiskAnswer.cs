using Evengrist.Bins.Storage;

namespace Evengrist.Plant.Answers;

/// <summary>What storage does to a bin, in plain values. Advice to look; nothing in it says that grain keeps.</summary>
public sealed record BinRiskAnswer(
    string Bin, string Material, double Tonnes, string Level, IReadOnlyList<ReasonAnswer> Reasons, IReadOnlyList<LayerRiskAnswer> LayersBottomFirst, IReadOnlyList<CableAnswer> Cables,
    string HeightsBy, IReadOnlyList<string> Cautions, string Advice)
{
    /// <summary>The bin in plain values.</summary>
    public static BinRiskAnswer Of(BinRisk risk)
    {
        ArgumentNullException.ThrowIfNull(risk);
        return new(risk.Bin.Code, risk.Bin.Material, risk.Stored.Tonnes, risk.Level.ToString().ToLowerInvariant(), [.. risk.Reasons.Select(ReasonAnswer.Of)],
            [.. risk.Layers.Select(LayerRiskAnswer.Of)], [.. risk.Stored.Cables.Select(CableAnswer.Of)], risk.Stored.LevelsBy, StorageCautions.For(risk.Reasons), StorageCautions.Advice);
    }
}

/// <summary>A reason to look, with the rule it rests on.</summary>
public sealed record ReasonAnswer(string Level, string About, string Words, string Rule)
{
    internal static ReasonAnswer Of(RiskReason reason) => new(reason.Level.ToString().ToLowerInvariant(), reason.Kind.ToString(), reason.Words, reason.Source);
}

/// <summary>A point of a cable.</summary>
public sealed record CableAnswer(string Point, DateTimeOffset At, double Celsius, double AboveMedian, double? RisePerWeek, double? SeasonPerWeek, bool Rising, bool HotSpot)
{
    internal static CableAnswer Of(CableState c) => new(c.Point.ToString(), c.At.ToDateTimeOffset(), c.Celsius, c.AboveMedian, c.RisePerWeek, c.Season, c.IsRising, c.IsHotSpot);
}

/// <summary>One layer judged. Null where a figure is not known; the reason stands beside it.</summary>
public sealed record LayerRiskAnswer(
    string Name, double Tonnes, double? FromMetres, double? ToMetres, DateTimeOffset Arrived, double? MoisturePercent, double? MoistestLoadPercent, double ShareOfMassRead,
    double Celsius, string TemperatureFrom, string Assumed, double? DaysByEquation, double? AlarmDays, string Equation, double? DaysMeasured, double? DaysMeasuredAtLeast, string Measured,
    double? LifeUsed, bool LifeUsedIsAtMost, double DaysBeyondEquation, double DaysColderThanEquation, double? DaysToAct, double? HumidityPercent, string Humidity,
    string InsectBand, string Insects, double? CarbonDioxideMgPerKgDay, string CarbonDioxide)
{
    internal static LayerRiskAnswer Of(LayerRisk risk)
    {
        var (layer, keeps, air) = (risk.Layer, risk.Keeps as StorageDays, risk.Air as Equilibrium);
        return new(
            layer.Name, layer.Tonnes, layer.Metres?.From, layer.Metres?.To, layer.Arrived.ToDateTimeOffset(), layer.MoisturePercent, layer.MoistestPercent, layer.ShareRead,
            risk.History.Celsius, risk.History.Origin.ToString().ToLowerInvariant(), risk.History.Assumption,
            keeps?.Days, keeps?.AlarmDays, (risk.Keeps as NoStorageDays)?.Reason ?? (keeps is null ? "moisture not read" : SafeStorageModel.Source),
            (risk.Measured as MeasuredDays)?.Days, (risk.Measured as MeasuredAtLeast)?.Days, (risk.Measured as NotMeasured)?.Reason ?? (risk.Measured is null ? "moisture not read" : MeasuredStorage.Source),
            risk.Life?.Used, risk.Life?.IsAtMost ?? false, risk.Life?.DaysBeyond ?? 0, risk.Life?.DaysColder ?? 0, risk.Life?.DaysToAct,
            100 * air?.Humidity, (risk.Air as NoEquilibrium)?.Reason ?? (air is null ? "moisture not read or no constants" : string.Join(" ", air.Notes)),
            risk.Band.Name, $"{risk.Band.Words} ({risk.Band.Source})", risk.CarbonDioxideMg, RespirationModel.Mark);
    }
}
