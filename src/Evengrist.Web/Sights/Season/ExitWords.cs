using Evengrist.Season;

namespace Evengrist.Web.Sights.Season;

/// <summary>Why planning stopped, in words.</summary>
public static class ExitWords
{
    /// <summary>The words.</summary>
    public static string Words(this SeasonExit exit) => exit switch
    {
        SeasonExit.Optimal => "no better plan exists",
        SeasonExit.GapReached => "within the gap asked for",
        SeasonExit.TimeReached => "time ran out",
        SeasonExit.Cancelled => "stopped by a person",
        SeasonExit.Infeasible => "the limits clash",
        SeasonExit.Unbounded => "the cost falls without end",
        _ => "the solver gave up",
    };
}
