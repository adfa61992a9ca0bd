namespace Evengrist.Laboratory.Sampling;

/// <summary>A plan of a table.</summary>
/// <param name="Severity">How severe.</param>
/// <param name="Letter">Of the lot and level.</param>
/// <param name="LimitPercent">Acceptance quality limit.</param>
/// <param name="Plan">n and c.</param>
/// <param name="Reject">From how many bad ones the lot is rejected; above c + 1 on reduced plans, where the lot between is accepted and looking goes back to normal.</param>
public sealed record TablePlan(Severity Severity, char Letter, double LimitPercent, AttributesPlan Plan, int Reject)
{
    /// <summary>What so many bad ones say.</summary>
    public LotVerdict Verdict(int bad) => bad <= Plan.Accept ? LotVerdict.Accepted : bad >= Reject ? LotVerdict.Rejected : LotVerdict.AcceptedBackToNormal;
}
