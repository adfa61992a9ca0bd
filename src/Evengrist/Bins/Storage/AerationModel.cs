namespace Evengrist.Bins.Storage;

/// <summary>How long a cooling front takes, what an air does to the grain's temperature and moisture, and what pressure it needs.</summary>
/// <remarks>
/// Behind the front grain and air have the temperature at which air of the outside air's heat content is in equilibrium with the grain: h(T, ERH(M, T)) = h(outside) [derived]. Heat
/// balance of a tonne: t = 1000 c_g (T_g − T)/(q ρ (h(T_g, ERH(M, T_g)) − h(outside))), with c_g 1.8 kJ/(kg K). The moisture of the grain is taken as unchanged, so this is an estimate. Model: docs/model/aeration.md.
/// </remarks>
public static class AerationModel
{
    /// <summary>An air cools when it brings the grain down by at least this much, °C. Ours.</summary>
    public const double LeastCooling = 1;

    /// <summary>A moisture within this of the grain's counts as the same, points. Ours.</summary>
    public const double NearPercent = 0.3;

    /// <summary>The rule of thumb with its mark.</summary>
    public const string Rule = "15 ÷ cfm/bu, a rule of thumb from a weak source (a web page on cooling fronts); another copy says 100 to 200 h at 0.1 cfm/bu";

    /// <summary>The heat balance with its mark.</summary>
    public const string HeatBalance = "heat balance of grain and moist air, derived; moisture of the grain taken as unchanged, no heat of the fan, no loss at the walls";

    /// <summary>What airs would do, or why nothing can be said.</summary>
    /// <param name="spec">The grain.</param>
    /// <param name="airs">The airs, for example one an hour.</param>
    public static AerationOutcome Of(AerationSpec spec, params IReadOnlyList<OutsideAir> airs)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(airs);
        if ((spec.Fault() ?? airs.Select(a => a.Fault()).FirstOrDefault(f => f is not null)) is { } fault)
        {
            return new NoAeration(fault);
        }

        if (EquilibriumModel.OfMoisture(spec.Constants, spec.GrainCelsius, spec.MoisturePercent) is not Equilibrium grain)
        {
            return new NoAeration($"The {spec.Constants.Form.Words()} equation gives no humidity for this grain.");
        }

        var cfm = spec.AirflowPerTonne / AerationSpec.PerCfmPerBushel;
        var aeration = new Aeration(cfm, 15 / cfm, RespirationModel.GrainHeat * 1000 / (spec.AirflowPerTonne * 60 * Air.Density * Air.Heat), [.. airs.Select(a => Effect(spec, grain, a))])
        {
            RuleDays = 15 / cfm / spec.FanHoursPerDay,
        };
        if (spec.DepthMetres is not { } depth)
        {
            return aeration;
        }

        var flow = spec.AirflowPerTonne / 60 * depth * spec.BulkDensity / 1000;
        var loose = PressureDrop.PascalsPerMetre(flow) * depth;
        return aeration with { Flow = flow, PascalsLoose = loose, PascalsPacked = loose * spec.PackedFactor, NoPressure = loose is null ? PressureDrop.Outside(flow) : "" };
    }

    /// <summary>The temperature grain comes to behind the front, °C.</summary>
    /// <param name="constants">The equilibrium constants of the wheat.</param>
    /// <param name="moisturePercent">The grain's moisture, per cent, wet basis.</param>
    /// <param name="air">The air.</param>
    public static double EffectiveCelsius(EmcConstants constants, double moisturePercent, OutsideAir air)
    {
        ArgumentNullException.ThrowIfNull(air);
        var (heat, dry) = (Air.Enthalpy(air.Celsius, air.Humidity), 100 * moisturePercent / (100 - moisturePercent));
        var (low, high) = (-30.0, 60.0);
        while (high - low > 1e-6)
        {
            var middle = (low + high) / 2;
            (low, high) = Air.Enthalpy(middle, EquilibriumModel.Humidity(constants, middle, dry)) < heat ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    private static AirEffect Effect(AerationSpec spec, Equilibrium grain, OutsideAir air)
    {
        var effective = EffectiveCelsius(spec.Constants, spec.MoisturePercent, air);
        var moisture = EquilibriumModel.OfHumidity(spec.Constants, air.Celsius, air.Humidity) is Equilibrium balance ? balance.MoisturePercent : (double?)null;
        var water = moisture switch
        {
            null => WaterEffect.Unknown,
            _ when moisture < spec.MoisturePercent - NearPercent => WaterEffect.Dries,
            _ when moisture > spec.MoisturePercent + NearPercent => WaterEffect.Wets,
            _ => WaterEffect.Keeps,
        };
        var effect = new AirEffect(air, effective, moisture, water, null, null) { CoolerByDryBulb = spec.GrainCelsius - air.Celsius >= LeastCooling };
        if (spec.GrainCelsius - effective < LeastCooling)
        {
            return effect;
        }

        // Each kilogram of air leaves with the grain's own temperature and humidity until the front has passed.
        var airs = RespirationModel.GrainHeat * 1000 * (spec.GrainCelsius - effective)
            / (Air.Enthalpy(spec.GrainCelsius, grain.Humidity) - Air.Enthalpy(air.Celsius, air.Humidity));
        return effect with
        {
            FrontHours = airs / (spec.AirflowPerTonne * 60 * Air.Density),
            WaterKilogramsPerTonne = airs * (Air.HumidityRatio(spec.GrainCelsius, grain.Humidity) - Air.HumidityRatio(air.Celsius, air.Humidity)),
        };
    }
}
