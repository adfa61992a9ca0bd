namespace Evengrist.Milling.Clock;

/// <summary>A stretch of the way: what comes in leaves after a dead time, blurred by what is stirred in it.</summary>
/// <remarks>Hours are of running at the flow of the moment: while the mill stands, the clock stands.</remarks>
/// <param name="Name">What it is, or where it ends.</param>
/// <param name="DelayHours">Dead time, h; 0 to 1000.</param>
/// <param name="StirredHours">Mean time in what is stirred, h; 0 to 1000; 0 for nothing stirred.</param>
public sealed record ClockStage(string Name, double DelayHours, double StirredHours)
{
    /// <summary>Most hours of a dead time or of what is stirred, and most stages and tanks [design].</summary>
    public const double MostHours = 1000;

    /// <summary>Most stages of a way [design].</summary>
    public const int MostStages = 30;

    /// <summary>Most tanks of a stage [design].</summary>
    public const int MostTanks = 20;

    /// <summary>One standard uncertainty of the dead time, h.</summary>
    public double DelayUncertainty { get; init; }

    /// <summary>One standard uncertainty of the stirred time, h.</summary>
    public double StirredUncertainty { get; init; }

    /// <summary>Into how many stirred tanks of one size, one after another, the stirred time is parted; 1 to 20. The more, the sharper.</summary>
    public int Tanks { get; init; } = 1;

    /// <summary>What is wrong with stages, each a sentence; empty where nothing is.</summary>
    public static IReadOnlyList<string> Faults(IReadOnlyList<ClockStage> stages)
    {
        ArgumentNullException.ThrowIfNull(stages);
        bool IsTime(double hours) => hours is >= 0 and <= MostHours;
        return stages.Count is 0 or > MostStages ? [$"There are {stages.Count} stages: give 1 to {MostStages}."] :
        [
            .. stages.Where(s => string.IsNullOrWhiteSpace(s.Name)).Select(_ => "A stage has no name: give it one."),
            .. stages.Where(s => !IsTime(s.DelayHours)).Select(s => $"{s.Name}: a dead time lies from 0 to {MostHours} h."),
            .. stages.Where(s => !IsTime(s.StirredHours)).Select(s => $"{s.Name}: a stirred time lies from 0 to {MostHours} h."),
            .. stages.Where(s => !IsTime(s.DelayUncertainty) || !IsTime(s.StirredUncertainty)).Select(s => $"{s.Name}: an uncertainty lies from 0 to {MostHours} h."),
            .. stages.Where(s => s.Tanks is < 1 or > MostTanks).Select(s => $"{s.Name}: there are 1 to {MostTanks} tanks."),
        ];
    }
}
