using Evengrist.Tempering;

namespace Evengrist.Web.Sights.Tempering;

/// <summary>What can be recorded at a temper bin, in the words of a form.</summary>
public static class TemperActWords
{
    /// <summary>What the run leaves to be recorded, a note last.</summary>
    public static IEnumerable<(string Value, string Words)> Choices(TemperRun run)
    {
        ArgumentNullException.ThrowIfNull(run);
        return [.. run.Next.Select(a => (a.ToString(), Of(a))), (TemperActForm.Note, "A note for those who come after")];
    }

    private static string Of(TemperAct act) => act switch
    {
        TemperAct.FillingBegun => "Start: filling has begun",
        TemperAct.FillingEnded => "Stop: filling has ended",
        TemperAct.WaterSet => "Trim: water was set",
        TemperAct.DrawingBegun => "Start: drawing to the mill has begun",
        _ => "Stop: drawing to the mill has ended",
    };
}
