using System.CommandLine;
using Evengrist.Cli.Said;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>Milling: flow sheets, the balance of the mill and the arrival clock.</summary>
internal static class MillingRoom
{
    public static Command Of(Voice voice, IClock clock) => new("milling", "The mill on paper: passages, rolls, cloths, and where each outlet leads.")
    {
        FlowSheetVerbs.Sheet(voice), FlowSheetVerbs.Kept(voice, clock), FlowSheetVerbs.Keep(voice, clock), MillSolveVerbs.Solve(voice), MillSolveVerbs.Fit(voice), MillTestVerbs.Of(voice, clock), MillDriftVerb.Of(voice), MillSuggestVerb.Of(voice), MillBalanceVerb.Of(voice), ClockVerb.Of(voice), ReconcileVerb.Of(voice),
    };
}
