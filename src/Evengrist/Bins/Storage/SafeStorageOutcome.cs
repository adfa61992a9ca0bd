namespace Evengrist.Bins.Storage;

/// <summary>How long wheat keeps at a moisture and a temperature, until nine kernels in ten still germinate; or that nothing is known.</summary>
public abstract record SafeStorageOutcome
{
    private protected SafeStorageOutcome()
    {
    }
}

/// <summary>Days by the recalled equation.</summary>
/// <param name="Days">Days the equation gives.</param>
/// <param name="AlarmDays">Days to plan by: the equation's times <see cref="SafeStorageModel.AlarmFactor"/>, because it ran longer than what was measured.</param>
public sealed record StorageDays(double Days, double AlarmDays) : SafeStorageOutcome;

/// <summary>The equation does not reach there.</summary>
/// <param name="Reason">Why.</param>
public sealed record NoStorageDays(string Reason) : SafeStorageOutcome;
