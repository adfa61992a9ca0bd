using Evengrist.Intake.Grading;

namespace Evengrist.Records.Intake;

/// <summary>The mill's own classes of wheat.</summary>
public static class HouseClasses
{
    /// <summary>Each in its newest version, with its paper.</summary>
    public static IEnumerable<(HouseClass House, Paper Paper)> Newest(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Papers(HouseClassJson.Kind).NewestOfEach().Read<HouseClass>(HouseClassJson.TryRead).Select(p => (p.Value, p.Paper));
    }
}
