using Evengrist.Laboratory.Calibration;
using Evengrist.Laboratory.Validation;
using NodaTime;

namespace Evengrist.Records.Laboratory;

/// <summary>A named person sets bias or slope of a kept calibration by pairs it read: a further version with the test's result. The version it came from stays.</summary>
/// <param name="With">The version that read the pairs.</param>
/// <param name="Reference">By the reference method.</param>
/// <param name="Read">By that version.</param>
/// <param name="Kind">What is set.</param>
/// <param name="Why">Why.</param>
public sealed record AdjustCalibration(KeptCalibration With, IReadOnlyList<double> Reference, IReadOnlyList<double> Read, AdjustmentKind Kind, string Why)
{
    private ValidationSpec Spec => AdjustmentModel.Test(With.Calibration, Reference, Read);

    /// <summary>The test; null where the pairs have faults.</summary>
    public ValidationOutcome? Test(out IReadOnlyList<string> faults) => (faults = Spec.Faults()).Count > 0 ? null : ValidationModel.Of(Spec);

    /// <summary>Keeps it; every fault where it cannot be, and then nothing is kept.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="by">Who.</param>
    /// <param name="now">When.</param>
    /// <param name="faults">What is wrong.</param>
    public KeptCalibration? In(Mill mill, string by, Instant now, out IReadOnlyList<string> faults)
    {
        ArgumentNullException.ThrowIfNull(mill);
        if (Test(out faults) is not { } found)
        {
            return null;
        }

        var newest = SpectralCalibrations.All(mill).Where(k => k.Code == With.Code).Max(k => k.Version);
        if (newest != With.Version)
        {
            faults = [$"Version {newest} of {With.Code} is kept since: read the samples with it, and set that one."];
            return null;
        }

        return AdjustmentModel.Adjusted(With.Calibration, found, Kind, now, by, Why, out faults) is { } adjusted ? SpectralCalibrations.Keep(mill, adjusted, by) : null;
    }
}
