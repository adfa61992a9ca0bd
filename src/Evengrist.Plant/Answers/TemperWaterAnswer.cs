using Evengrist.Plant.Cases;
using Evengrist.Tempering;
using NodaTime;

namespace Evengrist.Plant.Answers;

/// <summary>Tempering water by balance, the moisture to expect at first break, and when the wheat has rested. Advice: it opens no valve.</summary>
/// <param name="AimPercent">The aim at first break, per cent wet basis.</param>
/// <param name="AimBecause">How the aim came about; empty where it was given.</param>
/// <param name="Stages">Stage by stage.</param>
/// <param name="Total">All stages together.</param>
/// <param name="EvaporationKilogramsPerHour">Water lost to first break, kg/h; null without a flow.</param>
/// <param name="FirstBreakTonnesPerHour">Tempered wheat that reaches first break, t/h; null without a flow.</param>
/// <param name="FirstBreakTonnes">The same of the whole mass, t; null without a mass.</param>
/// <param name="FirstBreakPercent">Moisture to expect at first break, per cent wet basis.</param>
/// <param name="FirstBreakPlusMinus">Its ±, k = 2, points.</param>
/// <param name="Rest">The rest; null where none was asked for.</param>
/// <param name="Remarks">What must be said with it.</param>
/// <param name="Cautions">Where work can hurt.</param>
public sealed record TemperWaterAnswer(
    double AimPercent, IReadOnlyList<string> AimBecause, IReadOnlyList<TemperStageAnswer> Stages, TemperStageAnswer Total, double? EvaporationKilogramsPerHour, double? FirstBreakTonnesPerHour, double? FirstBreakTonnes,
    double FirstBreakPercent, double FirstBreakPlusMinus, TemperRestAnswer? Rest, IReadOnlyList<string> Remarks, IReadOnlyList<string> Cautions)
{
    /// <summary>Answers a case, or says why no water is to be given.</summary>
    public static Reply<TemperWaterAnswer> To(TemperWaterCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        return TemperWaterModel.Of(posed.Spec) switch
        {
            TemperWater water => new(Of(posed, water), []),
            NoTemperWater none => new(null, none.Reasons),
            var other => throw new InvalidOperationException($"Tempering water ended as {other.GetType().Name}."),
        };
    }

    private static TemperWaterAnswer Of(TemperWaterCase posed, TemperWater water)
    {
        var spec = posed.Spec;
        return new TemperWaterAnswer(
            spec.AimPercent, posed.Advice?.Reasons ?? [], [.. water.Stages.Select(s => TemperStageAnswer.Of(s, spec, water))],
            TemperStageAnswer.Of(new TemperStage(spec.MoisturePercent, water.Stages[^1].ToPercent, water.KilogramsPerTonne), spec, water),
            spec.TonnesPerHour * water.EvaporationKilogramsPerTonne, spec.TonnesPerHour * water.FirstBreakKilogramsPerTonne / 1000, spec.Tonnes * water.FirstBreakKilogramsPerTonne / 1000,
            water.AtFirstBreak.Percent, 2 * water.AtFirstBreak.StandardUncertainty, posed.Rest is { } rest ? TemperRestAnswer.Of(rest, posed.Window) : null, water.Remarks, TemperCautions.All);
    }
}

/// <summary>Water of one stage or of all.</summary>
/// <param name="FromPercent">Moisture before, per cent wet basis.</param>
/// <param name="ToPercent">Moisture after, per cent wet basis.</param>
/// <param name="KilogramsPerTonne">For each tonne of wheat before water.</param>
/// <param name="KilogramsPerHour">kg/h; null without a flow.</param>
/// <param name="LitresPerHour">L/h; null without a flow.</param>
/// <param name="Kilograms">For the whole mass; null without one.</param>
/// <param name="Litres">For the whole mass; null without one.</param>
public sealed record TemperStageAnswer(double FromPercent, double ToPercent, double KilogramsPerTonne, double? KilogramsPerHour, double? LitresPerHour, double? Kilograms, double? Litres)
{
    internal static TemperStageAnswer Of(TemperStage stage, TemperWaterSpec spec, TemperWater water) => new(
        stage.FromPercent, stage.ToPercent, stage.KilogramsPerTonne, stage.KilogramsPerTonne * spec.TonnesPerHour, stage.KilogramsPerTonne * spec.TonnesPerHour * water.LitresPerKilogram,
        stage.KilogramsPerTonne * spec.Tonnes, stage.KilogramsPerTonne * spec.Tonnes * water.LitresPerKilogram);
}

/// <summary>The rest by both diffusion laws, and when the wheat of a bin is ready.</summary>
/// <param name="Hours">The rest asked for, h, at <paramref name="AtCelsius"/>.</param>
/// <param name="AtCelsius">The temperature it holds at.</param>
/// <param name="WheatCelsius">The wheat's temperature.</param>
/// <param name="SoakingHours">By the soaking law, h.</param>
/// <param name="DryingHours">By the drying law, h.</param>
/// <param name="DisagreementHours">By how much they differ, h.</param>
/// <param name="SpeedRatio">How many times faster water moves by the drying law.</param>
/// <param name="FirstReady">When the first wheat is ready; null where no filling was given.</param>
/// <param name="LastReady">When the last is.</param>
/// <param name="Remarks">What must be said with it.</param>
public sealed record TemperRestAnswer(
    double Hours, double AtCelsius, double WheatCelsius, double SoakingHours, double DryingHours, double DisagreementHours, double SpeedRatio, string? FirstReady, string? LastReady, IReadOnlyList<string> Remarks)
{
    internal static TemperRestAnswer Of(RestCorrection rest, RestWindow? window) => new(
        rest.Hours, rest.AtCelsius, rest.Celsius, rest.SoakingHours, rest.DryingHours, rest.DisagreementHours, rest.SpeedRatio, Said(window?.FirstReady), Said(window?.LastReady),
        [.. DiffusionLaw.All.Select(l => $"{l.Name}: {l.Source}."), .. rest.Remarks]);

    private static string? Said(Instant? moment) => moment?.ToString("uuuu-MM-dd'T'HH:mm:ss'Z'", System.Globalization.CultureInfo.InvariantCulture);
}
