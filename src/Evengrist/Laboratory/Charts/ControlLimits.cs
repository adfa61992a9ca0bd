namespace Evengrist.Laboratory.Charts;

/// <summary>Limits of a control chart, in the unit of what it shows.</summary>
/// <param name="Lower">Lower limit.</param>
/// <param name="Centre">Centre line.</param>
/// <param name="Upper">Upper limit.</param>
public sealed record ControlLimits(double Lower, double Centre, double Upper)
{
    /// <summary>One standard deviation of what is shown, from the upper limit: a third of its distance from the centre.</summary>
    public double Sigma => (Upper - Centre) / 3;

    /// <summary>Whether a value lies beyond; one on a limit does not.</summary>
    public bool IsBeyond(double value) => value < Lower || value > Upper;
}
