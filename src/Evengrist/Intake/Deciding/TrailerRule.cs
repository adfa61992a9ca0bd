using Evengrist.Intake.Grading;

namespace Evengrist.Intake.Deciding;

/// <summary>Whether a trailer was cleaned as its last loads demand.</summary>
internal static class TrailerRule
{
    private const string Source = "common practice set down by us; the site's food-safety plan prevails";

    public static IEnumerable<Ruling> Of(TrailerHistory trailer)
    {
        foreach (var load in trailer.Loads.Take(TrailerHistory.Asked))
        {
            var duty = CleanOutDuty.After(load.What);
            if (duty == CleanOut.Never)
            {
                yield return new(LoadDecisionKind.TurnAway, $"The trailer carried {load.What.Words()} among its last {TrailerHistory.Asked} loads: no cleaning makes it fit for food.", Source, SourceMark.Design);
            }
            else if (trailer.Cleaned < duty)
            {
                yield return new(LoadDecisionKind.SetAside, $"The trailer carried {load.What.Words()}: it must be {duty.Words()}, and was {trailer.Cleaned.Words()}.", Source, SourceMark.Design)
                {
                    Caution = load.What is CargoKind.TreatedSeed or CargoKind.Chemicals ? "Look for coloured kernels and dust in the load before it is touched." : "",
                };
            }
        }
    }
}
