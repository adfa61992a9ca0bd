namespace Evengrist.Bins.Storage;

/// <summary>What was measured of how long wheat keeps.</summary>
public abstract record MeasuredOutcome
{
    private protected MeasuredOutcome()
    {
    }
}

/// <summary>Days on a measured point or between two.</summary>
/// <param name="Days">Days until germination had fallen to 90 %.</param>
public sealed record MeasuredDays(double Days) : MeasuredOutcome;

/// <summary>The trial ended before anything fell.</summary>
/// <param name="Days">Days it lasted.</param>
public sealed record MeasuredAtLeast(double Days) : MeasuredOutcome;

/// <summary>Nothing was measured there.</summary>
/// <param name="Reason">Where something was.</param>
public sealed record NotMeasured(string Reason) : MeasuredOutcome;
