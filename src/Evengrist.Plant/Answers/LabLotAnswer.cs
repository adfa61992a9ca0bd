using Evengrist.Laboratory.Conformity;
using Evengrist.Laboratory.Lots;

namespace Evengrist.Plant.Answers;

/// <summary>A line of a specification held against a lot; values on the unit and basis of the line, chances from 0 to 1.</summary>
/// <param name="What">The property.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Basis">Its moisture basis; null where it has none.</param>
/// <param name="Lower">Lower limit.</param>
/// <param name="Upper">Upper limit.</param>
/// <param name="Result">The result; null where there is none.</param>
/// <param name="StandardUncertainty">Its standard uncertainty as the lot's mean.</param>
/// <param name="Readings">How many readings it is of.</param>
/// <param name="Method">How it was measured.</param>
/// <param name="Instrument">With what.</param>
/// <param name="Chance">Chance inside; null where none is stated.</param>
/// <param name="CustomerRejects">Chance that the customer's laboratory finds the lot outside.</param>
/// <param name="Advice">What it advises; empty where nothing.</param>
/// <param name="WhyNot">Why no chance is stated; empty where one is.</param>
/// <param name="OutOfCheck">Why the instrument is not to be believed unasked; empty where nothing speaks against it.</param>
/// <param name="AsRead">The result as it was read, where a setting of the instrument was applied here; null where none was.</param>
public sealed record LotResultAnswer(
    string What, string Unit, string? Basis, decimal? Lower, decimal? Upper, decimal? Result, double? StandardUncertainty, int Readings, string Method, string Instrument, double? Chance, double? CustomerRejects, string Advice, string WhyNot, string OutOfCheck,
    decimal? AsRead)
{
    /// <summary>A line as it stands.</summary>
    public static LotResultAnswer Of(LotResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return new(
            result.Item.What.ToString(), result.Item.Unit, result.Item.Basis.IsStated ? result.Item.Basis.ToString() : null, result.Item.Lower, result.Item.Upper, result.Reported, result.Outcome?.Uncertainty, result.Values.Count,
            result.Method, result.Instrument, result.Outcome?.Chance, result.Outcome?.CustomerRejects, result.Advice?.Words ?? "", result.WhyNot, result.OutOfCheck, result.ReportedAsRead);
    }
}

/// <summary>A lot as it stands.</summary>
/// <param name="Lot">Its code.</param>
/// <param name="Flour">The flour.</param>
/// <param name="State">Waiting, Held, Released, Rework or Downgraded.</param>
/// <param name="From">When its part of the day began.</param>
/// <param name="Until">When it ended.</param>
/// <param name="Tonnes">Packed.</param>
/// <param name="Here">Packages here.</param>
/// <param name="OnHold">Packages on hold.</param>
/// <param name="Gone">Packages gone to customers.</param>
/// <param name="Specification">What it is held against; null where the flour has none.</param>
/// <param name="Advice">What the figures advise; null without a specification.</param>
/// <param name="Results">Line by line.</param>
/// <param name="Decisions">What was decided, the first first.</param>
public sealed record LabLotAnswer(
    string Lot, string Flour, string State, DateTimeOffset From, DateTimeOffset Until, decimal Tonnes, int Here, int OnHold, int Gone, string? Specification, string? Advice, IReadOnlyList<LotResultAnswer> Results,
    IReadOnlyList<LotDecisionAnswer> Decisions)
{
    /// <summary>A lot as it stands.</summary>
    /// <param name="lot">The lot.</param>
    /// <param name="state">Waiting, Held, Released, Rework or Downgraded.</param>
    /// <param name="packages">Where its packages are.</param>
    /// <param name="specification">What it is held against; null where the flour has none.</param>
    /// <param name="advice">What the figures advise; null without a specification.</param>
    /// <param name="results">Line by line.</param>
    /// <param name="decisions">What was decided.</param>
    public static LabLotAnswer Of(FlourLot lot, string state, IReadOnlyList<PackageStand> packages, string? specification, ReleaseAdvice? advice, IReadOnlyList<LotResult> results, IReadOnlyList<LotDecision> decisions)
    {
        ArgumentNullException.ThrowIfNull(lot);
        return new(
            lot.Code, lot.Flour, state, lot.From.ToDateTimeOffset(), lot.Until.ToDateTimeOffset(), lot.Mass.Tonnes, packages.Count(p => p.IsHere), packages.Count(p => p.IsHere && p.Hold is not null), packages.Count(p => p.GoneTo is not null),
            specification, advice?.Words, [.. results.Select(LotResultAnswer.Of)], [.. decisions.Select(LotDecisionAnswer.Of)]);
    }
}

/// <summary>What was decided of a lot.</summary>
/// <param name="Verdict">Release, Hold, Rework or Downgrade.</param>
/// <param name="As">Which flour it may go as; empty unless downgraded.</param>
/// <param name="By">Who.</param>
/// <param name="At">When.</param>
/// <param name="Reason">Why.</param>
/// <param name="Specification">Against what.</param>
public sealed record LotDecisionAnswer(string Verdict, string As, string By, DateTimeOffset At, string Reason, string Specification)
{
    /// <summary>A decision.</summary>
    public static LotDecisionAnswer Of(LotDecision decision)
    {
        ArgumentNullException.ThrowIfNull(decision);
        return new(decision.Verdict.ToString(), decision.As, decision.By, decision.At.ToDateTimeOffset(), decision.Reason, decision.Specification);
    }
}

/// <summary>A lot judged again.</summary>
/// <param name="Lot">Its code.</param>
/// <param name="State">How it stands.</param>
/// <param name="Wrong">How many of its readings are wrong.</param>
/// <param name="Before">The line as it was judged.</param>
/// <param name="After">The same with the readings put right.</param>
/// <param name="GoneTonnes">What has gone to customers.</param>
/// <param name="Customers">To whom.</param>
public sealed record RejudgedLotAnswer(string Lot, string State, int Wrong, LotResultAnswer Before, LotResultAnswer After, decimal GoneTonnes, IReadOnlyList<string> Customers)
{
    /// <summary>A lot judged again.</summary>
    /// <param name="again">Its odds.</param>
    /// <param name="state">How it stands.</param>
    /// <param name="gone">Its packages that went to customers.</param>
    public static RejudgedLotAnswer Of(Rejudgement again, string state, IReadOnlyList<PackageStand> gone)
    {
        ArgumentNullException.ThrowIfNull(again);
        return new(again.Lot.Code, state, again.Wrong, LotResultAnswer.Of(again.Before), LotResultAnswer.Of(again.After), gone.Sum(g => g.Gone.Tonnes), [.. gone.Select(g => g.GoneTo!.Code).Distinct()]);
    }
}
