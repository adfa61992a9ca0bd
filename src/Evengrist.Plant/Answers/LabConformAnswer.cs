using Evengrist.Laboratory.Conformity;
using Evengrist.Plant.Cases;

namespace Evengrist.Plant.Answers;

/// <summary>Whether a lot is inside its limits, and how surely; in the unit of the results, chances from 0 to 1.</summary>
/// <param name="Judged">The result that is judged.</param>
/// <param name="Uncertainty">Its standard uncertainty as the lot's mean.</param>
/// <param name="KnownMean">Mean of what is known of the lot's mean.</param>
/// <param name="KnownDeviation">Its standard deviation.</param>
/// <param name="ChanceByResult">Chance inside by the results alone.</param>
/// <param name="Chance">Chance inside by all that is known; of any part of the lot by the rule LotRange.</param>
/// <param name="Guard">Guard band.</param>
/// <param name="AcceptFrom">The least result that is accepted; null for none.</param>
/// <param name="AcceptTo">The most.</param>
/// <param name="Accepted">Whether the decision rule accepts the result.</param>
/// <param name="CustomerRejects">Chance that the customer's laboratory finds the lot outside.</param>
/// <param name="Lots">What the rule does to all lots of the mill; null where it is not known how they lie.</param>
/// <param name="Guards">Guard bands for the risks wanted over all lots.</param>
/// <param name="Missing">Results the rule still asks for.</param>
/// <param name="Advice">release, test n more, or hold; a named person decides.</param>
/// <param name="Remarks">What else has to be known.</param>
public sealed record LabConformAnswer(
    double Judged, double Uncertainty, double KnownMean, double KnownDeviation, double ChanceByResult, double Chance, double Guard, double? AcceptFrom, double? AcceptTo, bool Accepted, double? CustomerRejects, LotRisk? Lots,
    IReadOnlyList<GuardOverLotsAnswer> Guards, int Missing, string Advice, IReadOnlyList<string> Remarks)
{
    /// <summary>Answers a case.</summary>
    public static Reply<LabConformAnswer> To(LabConformCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        var (spec, found) = (posed.Spec, ConformityModel.Of(posed.Spec));
        return new(
            new LabConformAnswer(
                found.Judged, found.Uncertainty, found.Known.Mean, found.Known.Deviation, found.ChanceByResult, found.Chance, found.Guard, found.Acceptance.Lower, found.Acceptance.Upper, found.IsAccepted, found.CustomerRejects, found.Risk,
                [.. Bands(posed, found)], found.Missing, found.Advice.Words, [.. Told(spec, found)]), []);
    }

    private static IEnumerable<GuardOverLotsAnswer> Bands(LabConformCase posed, ConformityOutcome found) =>
        from wanted in new[] { (RiskOverLots.AcceptedOutside, posed.Wanted?.AcceptedOutside), (RiskOverLots.RejectedInside, posed.Wanted?.RejectedInside) }
        where wanted.Item2 is not null
        select GuardOverLotsAnswer.Of(GuardOverLots.Of(wanted.Item1, wanted.Item2!.Value, posed.Spec.Lots!, found.Uncertainty, posed.Spec.Tolerance));

    private static IEnumerable<string> Told(ConformitySpec spec, ConformityOutcome found)
    {
        if (spec.Results.Count > 1 && spec.Spread.Bias == 0)
        {
            yield return "No part of the uncertainty is stated as shared by all results: the mean is taken as if every error were independent. What one instrument is off by does not average away.";
        }

        if (found.Acceptance.IsCrossed)
        {
            yield return "The guard band is wider than the room between the limits: no result can be accepted. Measure more surely.";
        }

        if (found.Advice is ReleaseAdvice.Retest { More: > 0 } && found.Missing == 0)
        {
            yield return "The number of further results supposes that their mean stays where it is.";
        }
    }
}

/// <summary>The guard band that keeps a risk over all lots.</summary>
/// <param name="Keeps">AcceptedOutside or RejectedInside.</param>
/// <param name="Wanted">The risk that was wanted.</param>
/// <param name="Guard">The band, below 0 where results beyond the limit are accepted; null where none keeps it.</param>
/// <param name="AcceptFrom">The least result accepted with it.</param>
/// <param name="AcceptTo">The most.</param>
/// <param name="Lots">Both risks with it.</param>
public sealed record GuardOverLotsAnswer(string Keeps, double Wanted, double? Guard, double? AcceptFrom, double? AcceptTo, LotRisk? Lots)
{
    /// <summary>A band.</summary>
    public static GuardOverLotsAnswer Of(GuardOverLots band)
    {
        ArgumentNullException.ThrowIfNull(band);
        return new(band.Keeps.ToString(), band.Wanted, band.Guard, band.Acceptance?.Lower, band.Acceptance?.Upper, band.Risk);
    }
}
