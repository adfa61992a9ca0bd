namespace Evengrist.Packing.Runs;

/// <summary>A flour bin that feeds runs and is fed by the mill.</summary>
/// <param name="Code">What it is known by.</param>
/// <param name="Tonnes">In it when the plan starts, 0 or more.</param>
/// <param name="Capacity">Most it holds, tonnes.</param>
/// <param name="Inflows">What the mill makes into it.</param>
public sealed record FlourBin(string Code, double Tonnes, double Capacity, IReadOnlyList<Inflow> Inflows);

/// <summary>Flour the mill makes into a bin; times are minutes from the start of the plan.</summary>
/// <param name="From">Begin.</param>
/// <param name="Until">End.</param>
/// <param name="TonnesPerHour">Rate, above 0.</param>
public sealed record Inflow(int From, int Until, double TonnesPerHour)
{
    /// <summary>What has come by a time, tonnes.</summary>
    /// <param name="minute">Minutes from the start of the plan.</param>
    public double By(int minute) => Math.Clamp(minute - From, 0, Until - From) * TonnesPerHour / 60;
}
