using Evengrist.Packing.Rework;

namespace Evengrist.Plant.Answers;

/// <summary>Totes beside a run, the oldest first, in plain values.</summary>
/// <param name="Into">The flour of the run.</param>
/// <param name="TonnesPerHour">Its flow; null where not known.</param>
/// <param name="Totes">The totes.</param>
/// <param name="Note">What it is, and is not.</param>
public sealed record ReworkAdviceAnswer(string Into, double? TonnesPerHour, IReadOnlyList<ReworkToteAnswer> Totes, string Note)
{
    /// <summary>What is said with every answer.</summary>
    public const string Said = "It advises: a named person looks at the flour and feeds it. The site's allergen and food safety plan prevails, and no figure here says that it is safe.";

    /// <summary>Totes beside a run.</summary>
    public static ReworkAdviceAnswer Of(IEnumerable<ReworkTote> totes, ReworkRun run, ReworkRules rules)
    {
        ArgumentNullException.ThrowIfNull(run);
        return new(run.Flour, run.TonnesPerHour, [.. ReworkModel.Of(totes, run, rules).Select(c => new ReworkToteAnswer(
            c.Tote.Code, c.Tote.Flour, c.Tote.Grams, Math.Round(c.Tote.AgeDays, 2), c.Tote.Allergens, c.Tote.MostEnriched, c.IsNext, Math.Round(c.MostPercent, 4), c.GramsPerHour is { } rate ? Math.Round(rate, 1) : null, c.Hours is { } hours ? Math.Round(hours, 3) : null,
            Math.Round(c.OverEnrichedPercent, 4), [.. run.Values.Select(v => new ReworkedValueAnswer(v.What, Math.Round(v.With(c.MostPercent), 4)))], [.. c.Findings.Select(f => new FindingAnswer(f.Weight.ToString(), f.Words))]))], Said);
    }
}

/// <summary>A tote beside a run.</summary>
/// <param name="Code">The tote.</param>
/// <param name="Flour">Its flour.</param>
/// <param name="Grams">What lies in it.</param>
/// <param name="AgeDays">Its age.</param>
/// <param name="Allergens">Beyond wheat.</param>
/// <param name="MostEnriched">What of it is enriched, at most, a fraction.</param>
/// <param name="IsNext">Whether it is the next to feed.</param>
/// <param name="MostPercent">Most of the run it may be, %.</param>
/// <param name="GramsPerHour">That, g/h; null without a flow.</param>
/// <param name="Hours">How long it lasts so; null without a flow.</param>
/// <param name="OverEnrichedPercent">Of the premix's dose too much at most, %, where it is dosed on all.</param>
/// <param name="Values">What the flour comes to with the most of it.</param>
/// <param name="Findings">What stops it, is asked of it, is cautioned.</param>
public sealed record ReworkToteAnswer(
    string Code, string Flour, long Grams, double AgeDays, IReadOnlyList<string> Allergens, double MostEnriched, bool IsNext, double MostPercent, double? GramsPerHour, double? Hours, double OverEnrichedPercent,
    IReadOnlyList<ReworkedValueAnswer> Values, IReadOnlyList<FindingAnswer> Findings);

/// <summary>A value of the flour with rework in it.</summary>
/// <param name="What">What it is.</param>
/// <param name="Value">What it comes to.</param>
public sealed record ReworkedValueAnswer(string What, double Value);
