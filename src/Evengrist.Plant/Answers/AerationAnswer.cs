using Evengrist.Bins.Storage;
using Evengrist.Plant.Cases;

namespace Evengrist.Plant.Answers;

/// <summary>What airs would do to posed grain. Advice: it starts and stops no fan.</summary>
public sealed record AerationAnswer(
    double CfmPerBushel, double M3PerMinTonne, double RuleHours, double RuleDays, string Rule, double HoursByWarmthAlone, string HeatBalance,
    IReadOnlyList<AirAnswer> Airs, int HoursCoolerByDryBulb, int HoursThatCool, double? M3PerSecondM2, double? PascalsLoose, double? PascalsPacked, string Pressure, string Constants, IReadOnlyList<string> Cautions)
{
    /// <summary>Answers a case; a fault where the grain cannot be.</summary>
    public static Parsed<AerationAnswer> To(AerationCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        var spec = posed.Spec;
        return AerationModel.Of(spec, posed.Airs) switch
        {
            Aeration a => Parsing.Got(new AerationAnswer(
                a.CfmPerBushel, spec.AirflowPerTonne, a.RuleHours, a.RuleDays, AerationModel.Rule, a.SensibleHours, AerationModel.HeatBalance, [.. a.Airs.Select(AirAnswer.Of)],
                a.Airs.Count(e => e.CoolerByDryBulb), a.Airs.Count(e => e.Cools), a.Flow, a.PascalsLoose, a.PascalsPacked,
                a.NoPressure.Length > 0 ? a.NoPressure : spec.DepthMetres is null ? "no depth given" : PressureDrop.Source,
                $"{spec.Constants.Form.Words()}, {spec.Constants.Wheat} wheat: {spec.Constants.Mark.Words()}; {spec.Constants.Source}", [StorageCautions.Entry, StorageCautions.Dust])),
            NoAeration no => Parsing.Failed<AerationAnswer>(Fault.Told("$", no.Reason)),
            var other => throw new InvalidOperationException($"An aeration ended as {other.GetType().Name}."),
        };
    }
}

/// <summary>What one air would do.</summary>
public sealed record AirAnswer(
    double Celsius, double HumidityPercent, double EffectiveCelsius, bool CoolerByDryBulb, bool Cools, double? FrontHours, double? WaterKilogramsPerTonne, double? WouldBringMoisturePercent, string Water)
{
    internal static AirAnswer Of(AirEffect e) => new(e.Air.Celsius, 100 * e.Air.Humidity, e.EffectiveCelsius, e.CoolerByDryBulb, e.Cools, e.FrontHours, e.WaterKilogramsPerTonne, e.AirMoisturePercent,
        e.Water.ToString().ToLowerInvariant());
}
