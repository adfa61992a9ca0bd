namespace Evengrist.Bins.Storage;

/// <summary>What blowing air through grain would do, or why nothing can be said.</summary>
public abstract record AerationOutcome
{
    private protected AerationOutcome()
    {
    }
}

/// <summary>What the air would do. It advises; it starts and stops no fan.</summary>
/// <param name="CfmPerBushel">The airflow in cfm/bu.</param>
/// <param name="RuleHours">Hours for a front to pass by the rule of thumb 15/(cfm/bu); a weak source.</param>
/// <param name="SensibleHours">Hours if the air took up warmth alone and no water; an upper bound for cooling.</param>
/// <param name="Airs">What each air posed would do, in the order posed.</param>
public sealed record Aeration(double CfmPerBushel, double RuleHours, double SensibleHours, IReadOnlyList<AirEffect> Airs) : AerationOutcome
{
    /// <summary>Airflow for each m² of floor, m³/s; null where no depth was given.</summary>
    public double? Flow { get; init; }

    /// <summary>Pressure drop for loosely filled grain, Pa; null where no depth was given or the equation does not reach.</summary>
    public double? PascalsLoose { get; init; }

    /// <summary>The same times the packing factor, Pa.</summary>
    public double? PascalsPacked { get; init; }

    /// <summary>Why there is no pressure drop; empty where there is one or none was asked.</summary>
    public string NoPressure { get; init; } = "";

    /// <summary>Days for a front by the rule of thumb at the fan hours a day given.</summary>
    public double RuleDays { get; init; }
}

/// <summary>What one air would do.</summary>
/// <param name="Air">The air.</param>
/// <param name="EffectiveCelsius">The temperature the grain would come to behind the front, from its moisture and the air's dry bulb and humidity, °C.</param>
/// <param name="AirMoisturePercent">The moisture that air would bring the grain nearest the fan to in the end, per cent, wet basis; null where the equation gives none.</param>
/// <param name="Water">Whether it dries or wets the grain nearest the fan.</param>
/// <param name="FrontHours">Hours for the front by the heat balance; null where the air does not cool.</param>
/// <param name="WaterKilogramsPerTonne">Water taken out of each tonne while the front passes, kg; negative where it is brought in; null where the air does not cool.</param>
public sealed record AirEffect(OutsideAir Air, double EffectiveCelsius, double? AirMoisturePercent, WaterEffect Water, double? FrontHours, double? WaterKilogramsPerTonne)
{
    /// <summary>Whether the dry bulb alone would call it cooler than the grain.</summary>
    public bool CoolerByDryBulb { get; init; }

    /// <summary>Whether it cools by the effective temperature.</summary>
    public bool Cools => FrontHours is not null;
}

/// <summary>What an air does to the moisture of grain.</summary>
public enum WaterEffect
{
    /// <summary>The equation gives no figure there.</summary>
    Unknown = 0,

    /// <summary>It dries the grain.</summary>
    Dries = 1,

    /// <summary>It leaves the moisture about as it is, within <see cref="AerationModel.NearPercent"/>.</summary>
    Keeps = 2,

    /// <summary>It wets the grain.</summary>
    Wets = 3,
}

/// <summary>Nothing can be said.</summary>
/// <param name="Reason">Why, and what to do.</param>
public sealed record NoAeration(string Reason) : AerationOutcome;
