using System.Globalization;
using NodaTime;

namespace Evengrist.Bins.Storage;

/// <summary>The rules by which a bin is named, each with its source.</summary>
internal static class RiskRules
{
    private const double MuchRise = 2 * CableState.RiseLimit;
    private const double MoistFrom = 12.5;
    private const double WarmFrom = 20;
    private const double UnknownShare = 0.2;
    private static readonly Duration NotReadFor = Duration.FromDays(14), InsectsFor = Duration.FromDays(60);

    public static IEnumerable<RiskReason> Of(StoredBin bin, IReadOnlyList<LayerRisk> layers, EmcConstants? constants, Instant at) => layers.Count == 0 ? [] :
    [
        .. Life(layers), .. Heating(bin), .. MoistAir(layers), .. Insects(bin, at), .. Warmth(layers), .. CarbonDioxide(bin), .. NotRead(bin, layers, at), .. Moist(layers), .. NotKnown(bin, layers, constants),
    ];

    private static IEnumerable<RiskReason> Life(IReadOnlyList<LayerRisk> layers)
    {
        var used = layers.Where(l => l.Life is { IsAtMost: false, Used: >= StorageLife.Alarm }).OrderByDescending(l => l.Life!.Used).ToArray();
        if (used.Length == 0)
        {
            yield break;
        }

        var (worst, life) = (used[0], used[0].Life!);
        var act = life.Used >= StorageLife.Act;
        yield return new RiskReason(act ? RiskLevel.Act : RiskLevel.Look, RiskKind.Life,
            Text($"the layer {Where(worst)} has used {(life.DaysBeyond > 0 ? "more than " : "")}{life.Used:0.00} of the time it keeps: {worst.Layer.MoisturePercent:0.0} % moisture, {worst.History.Celsius:0.0} °C now, {Days(worst.History)} days in store{Others(used.Length - 1)}"),
            $"Alarm at {StorageLife.Alarm.ToString(CultureInfo.InvariantCulture)}, act at {StorageLife.Act.ToString(CultureInfo.InvariantCulture)} of the equation's days × {SafeStorageModel.AlarmFactor.ToString(CultureInfo.InvariantCulture)}, limits of our own; {SafeStorageModel.Source}");
    }

    private static IEnumerable<RiskReason> Heating(StoredBin bin)
    {
        var points = bin.Cables.Where(c => c.IsRising || c.IsHotSpot).OrderByDescending(c => c.IsRising && c.IsHotSpot).ThenByDescending(c => c.AgainstSeason ?? 0).ToArray();
        if (points.Length == 0)
        {
            yield break;
        }

        var worst = points[0];
        var act = (worst.IsRising && worst.IsHotSpot) || worst.AgainstSeason > MuchRise;
        var rise = worst.IsRising ? Text($"warms by {worst.RisePerWeek:0.0} °C a week, {worst.AgainstSeason:0.0} more than {(worst.Season is null ? "nothing (the season is not known)" : "the season")}") : "";
        var spot = worst.IsHotSpot ? Text($"stands {worst.AboveMedian:0.0} °C above the middle of the bin's points") : "";
        var filled = bin.Layers.Any(l => l.Arrived > worst.At - CableModel.Window) ? "; grain came in within three weeks, which may be why" : "";
        yield return new RiskReason(act ? RiskLevel.Act : RiskLevel.Look, RiskKind.Heating,
            Text($"{worst.Point} {string.Join(" and ", new[] { rise, spot }.Where(s => s.Length > 0))}: {worst.Celsius:0.0} °C{Others(points.Length - 1, "point")}{filled}"),
            Text($"Rise above {CableState.RiseLimit:0} °C a week against the season (from memory); more than {CableState.HotSpotAbove:0} °C above the bin's median, and the season as the median point of all bins, are limits of our own"));
    }

    private static IEnumerable<RiskReason> MoistAir(IReadOnlyList<LayerRisk> layers)
    {
        var moist = layers.Where(l => l.IsMoistAir).OrderByDescending(l => ((Equilibrium)l.Air!).Humidity).ToArray();
        if (moist.Length > 0)
        {
            var air = (Equilibrium)moist[0].Air!;
            yield return new RiskReason(RiskLevel.Look, RiskKind.MoistAir,
                Text($"the air between the kernels is reckoned at {100 * air.Humidity:0} % humidity {Where(moist[0])}: {air.MoisturePercent:0.0} %, {air.Celsius:0.0} °C{Others(moist.Length - 1)}"),
                $"Keep it at or below {100 * LayerRisk.HumidityLimit:0} % (an advisory on the web, weak); {air.Constants.Form.Words()}, {air.Constants.Wheat} wheat, constants {air.Constants.Mark.Words()}");
        }
    }

    private static IEnumerable<RiskReason> Insects(StoredBin bin, Instant at)
    {
        if (bin.Insects is { } found && found.Weevils + found.Others > 0 && at - found.At <= InsectsFor)
        {
            yield return new RiskReason(RiskLevel.Act, RiskKind.Insects,
                Text($"live insects in the last sample ({found.Weevils} weevils, {found.Others} others)"),
                "Counted in a sample; 7 CFR 810.107 (2015 edition) calls grain infested from two live weevils, one with another live insect, or two others. A sample without insects does not clear a bin");
        }
    }

    private static IEnumerable<RiskReason> Warmth(IReadOnlyList<LayerRisk> layers)
    {
        var warm = layers.Where(l => l.Band.Develops && l.History.Origin == TemperatureOrigin.Cable).OrderByDescending(l => l.History.Celsius).ToArray();
        if (warm.Length > 0)
        {
            yield return new RiskReason(RiskLevel.Note, RiskKind.InsectWarmth, Text($"{warm[0].History.Celsius:0.0} °C {Where(warm[0])}: {warm[0].Band.Words}{Others(warm.Length - 1)}"), warm[0].Band.Source);
        }
    }

    private static IEnumerable<RiskReason> CarbonDioxide(StoredBin bin)
    {
        if (bin.CarbonDioxide is { IsRising: true } trend)
        {
            yield return new RiskReason(RiskLevel.Look, RiskKind.CarbonDioxide,
                Text($"CO₂ in its air stands at {trend.Ppm:0} ppm; {trend.UsualPpm:0} ppm was usual in the four weeks before"),
                Text($"More than {CarbonDioxideTrend.RiseFactor} times the usual is a limit of our own; a trend, do not use for release"));
        }
    }

    private static IEnumerable<RiskReason> NotRead(StoredBin bin, IReadOnlyList<LayerRisk> layers, Instant at)
    {
        Instant? last = bin.Cables.Count == 0 ? null : bin.Cables.Max(c => c.At);
        var since = last ?? layers.Min(l => l.Layer.Arrived);
        if (at - since > NotReadFor)
        {
            yield return new RiskReason(RiskLevel.Look, RiskKind.NotRead,
                Text($"no cable was read {(last is null ? "since its grain came, " : "for ")}{(at - since) / Duration.FromDays(1):0} days: nobody knows its temperature"), "Two weeks without a reading, a limit of our own");
        }
    }

    private static IEnumerable<RiskReason> Moist(IReadOnlyList<LayerRisk> layers)
    {
        var moist = layers.Where(l => l.Layer.MoisturePercent > MoistFrom && l.History.Celsius >= WarmFrom).OrderByDescending(l => l.Layer.MoisturePercent).ToArray();
        if (moist.Length > 0)
        {
            yield return new RiskReason(RiskLevel.Note, RiskKind.Moist,
                Text($"{moist[0].Layer.MoisturePercent:0.0} % moisture at {moist[0].History.Celsius:0.0} °C {Where(moist[0])}: read its temperatures at least twice a week{Others(moist.Length - 1)}"),
                "Extension circular CR-1741: above 12.5 % in a region of hot summers wheat may be at risk; warm from 20 °C is a limit of our own");
        }
    }

    private static IEnumerable<RiskReason> NotKnown(StoredBin bin, IReadOnlyList<LayerRisk> layers, EmcConstants? constants)
    {
        var unknown = layers.Sum(l => l.Layer.Tonnes * (l.Layer.MoisturePercent is null ? 1 : 1 - l.Layer.ShareRead));
        if (unknown > UnknownShare * bin.Tonnes)
        {
            yield return new RiskReason(RiskLevel.Note, RiskKind.NotKnown, Text($"no moisture was read on {unknown:0} t of it: what that keeps is not reckoned"), "The readings on the loads it came on");
        }

        if (constants is null)
        {
            yield return new RiskReason(RiskLevel.Note, RiskKind.NotKnown, $"no equilibrium constants are given for the class \"{bin.Bin.Material}\": the air between its kernels is not reckoned", "The table of constants");
        }
    }

    private static string Where(LayerRisk risk) => risk.Layer.Metres is { } m ? Text($"at {m.From:0.0} to {m.To:0.0} m") : risk.Layer.Name.Length > 0 ? $"\"{risk.Layer.Name}\"" : "without a height";

    private static string Others(int more, string what = "layer") => more == 0 ? "" : Text($"; and {more} more {what}{(more == 1 ? "" : "s")}");

    private static string Days(TemperatureHistory history) => Text($"{(history.Points[^1].At - history.Points[0].At) / Duration.FromDays(1):0}");

    private static string Text(FormattableString text) => FormattableString.Invariant(text);
}
