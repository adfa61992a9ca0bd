namespace Evengrist.Laboratory.Conformity;

/// <summary>The guard band that keeps a risk over all lots of a mill, and what both risks are with it. Model: docs/model/conformity.md.</summary>
/// <param name="Keeps">Which risk it keeps.</param>
/// <param name="Wanted">The risk that was wanted.</param>
/// <param name="Guard">The band, below 0 where results beyond the limit are accepted; null where none keeps it.</param>
/// <param name="Acceptance">Results accepted with it; null where none keeps it.</param>
/// <param name="Risk">Both risks with it; null where none keeps it.</param>
public sealed record GuardOverLots(RiskOverLots Keeps, double Wanted, double? Guard, Tolerance? Acceptance, LotRisk? Risk)
{
    /// <summary>Which risk, in words.</summary>
    public string Words => Keeps == RiskOverLots.AcceptedOutside ? "outside and accepted" : "inside and turned away";

    /// <summary>Reckons it.</summary>
    /// <param name="keeps">Which risk is kept.</param>
    /// <param name="wanted">At most so much, above 0 and at most 0.5.</param>
    /// <param name="lots">How the mill's lots lie, deviation above 0.</param>
    /// <param name="uncertainty">Of what is decided by, above 0.</param>
    /// <param name="tolerance">The limits.</param>
    public static GuardOverLots Of(RiskOverLots keeps, double wanted, NormalBelief lots, double uncertainty, Tolerance tolerance)
    {
        ArgumentNullException.ThrowIfNull(tolerance);
        var guard = keeps == RiskOverLots.AcceptedOutside ? GuardBand.ForLotsAcceptedOutside(lots, uncertainty, tolerance, wanted) : GuardBand.ForLotsRejectedInside(lots, uncertainty, tolerance, wanted);
        return guard is { } band && tolerance.Within(band) is var acceptance ? new(keeps, wanted, band, acceptance, LotRisk.Of(lots, uncertainty, tolerance, acceptance)) : new(keeps, wanted, null, null, null);
    }
}

/// <summary>A risk over all lots.</summary>
public enum RiskOverLots
{
    /// <summary>The buyer's: a lot is outside and accepted.</summary>
    AcceptedOutside = 0,

    /// <summary>The mill's: a lot is inside and turned away.</summary>
    RejectedInside = 1,
}
