namespace Evengrist.Intake;

/// <summary>What comes of a queue forecast: a <see cref="YardForecast"/>, or why there is none.</summary>
public abstract record YardOutcome;

/// <summary>One truck's wait from coming until it is served.</summary>
/// <param name="Arrives">When it came or is expected, in minutes from now.</param>
/// <param name="Minutes">How long it waits in all; at least 0.</param>
/// <param name="StandardUncertainty">Half the difference between the wait with every service one deviation longer and with every one shorter, in minutes.</param>
public sealed record YardWait(double Arrives, double Minutes, double StandardUncertainty);

/// <summary>A queue forecast.</summary>
/// <param name="Waits">Every truck still to be served, by arrival.</param>
/// <param name="ClearAfterMinutes">When the last of them has been served, in minutes from now.</param>
/// <param name="TrucksPerHour">Most trucks that the lanes serve in an hour.</param>
public sealed record YardForecast(IReadOnlyList<YardWait> Waits, double ClearAfterMinutes, double TrucksPerHour) : YardOutcome
{
    /// <summary>The longest wait; null where nobody is to be served.</summary>
    public YardWait? Longest => Waits.MaxBy(w => w.Minutes);
}

/// <summary>No forecast can be made.</summary>
/// <param name="Reasons">Each a sentence; at least one.</param>
public sealed record NoYardForecast(IReadOnlyList<string> Reasons) : YardOutcome;
