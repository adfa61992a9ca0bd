namespace Evengrist.Laboratory.Conformity;

/// <summary>Whether a lot is inside the limits of one property, and how surely.</summary>
/// <param name="Judged">The result that is judged: the mean, or by the rule of single results the one least likely inside.</param>
/// <param name="Uncertainty">Its standard uncertainty as the lot's mean.</param>
/// <param name="Known">What is known of the lot's mean: after the result, and what is known of the mill's lots where that was given.</param>
/// <param name="ChanceByResult">Chance inside by the results alone, 0 to 1.</param>
/// <param name="Chance">Chance inside by all that is known; by the rule of the lot's range, the share of the lot that is.</param>
/// <param name="Guard">Width of the guard band; 0 without one.</param>
/// <param name="Acceptance">Results that are accepted.</param>
/// <param name="IsAccepted">Whether the decision rule accepts the result.</param>
/// <param name="CustomerRejects">Chance that the customer's laboratory finds the lot outside; null where nothing is known of it.</param>
/// <param name="Risk">What the rule does to all lots; null where it is not known how they lie.</param>
/// <param name="Missing">How many results the rule still asks for.</param>
/// <param name="Advice">What this advises.</param>
public sealed record ConformityOutcome(
    double Judged, double Uncertainty, NormalBelief Known, double ChanceByResult, double Chance, double Guard, Tolerance Acceptance, bool IsAccepted, double? CustomerRejects, LotRisk? Risk, int Missing, ReleaseAdvice Advice);
