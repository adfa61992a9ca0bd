using Evengrist.Laboratory.Conformity;
using Evengrist.Laboratory.Specifications;
using Evengrist.Ledger;

namespace Evengrist.Laboratory.Lots;

/// <summary>A lot held against one line of a specification.</summary>
/// <param name="Item">The line.</param>
/// <param name="Readings">The readings that are judged: of one method and instrument, never a mixture; empty where there are none.</param>
/// <param name="Values">Each on the unit and basis of the line.</param>
/// <param name="Others">How many further readings there are, by other methods or instruments.</param>
/// <param name="Outcome">The judgement; null where there is none.</param>
/// <param name="WhyNot">Why there is none, and what to do; empty where there is one.</param>
public sealed record LotResult(SpecificationItem Item, IReadOnlyList<Reading> Readings, IReadOnlyList<decimal> Values, int Others, ConformityOutcome? Outcome, string WhyNot)
{
    /// <summary>The result as it is reported: the mean, or by the rule of single results the one least likely inside; null without readings.</summary>
    public decimal? Reported => Values.Count == 0 ? null : Item.Rule == ResultRule.Single && Outcome is { } judged ? Values.MinBy(v => Math.Abs((double)v - judged.Judged)) : Values.Average();

    /// <summary>How it was measured; empty without readings.</summary>
    public string Method => Readings.Count == 0 ? "" : Readings[0].Method;

    /// <summary>With what; empty where none is named.</summary>
    public string Instrument => Readings.Count == 0 ? "" : Readings[0].Instrument;

    /// <summary>What this line advises: hold where it is required and cannot be judged.</summary>
    public ReleaseAdvice? Advice => Outcome?.Advice ?? (Item.Required ? new ReleaseAdvice.Hold() : null);
}
