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
    /// <summary>Why the instrument is not to be believed unasked; empty where nothing speaks against it. Then the line advises no release: another instrument or method goes before it, or a named person says why.</summary>
    public string OutOfCheck { get; init; } = "";

    /// <summary>Each as the instrument read it, on the unit and basis of the line; empty where nothing was applied here.</summary>
    public IReadOnlyList<decimal> AsRead { get; init; } = [];

    /// <summary>The result as it is reported: the mean, or by the rule of single results the one least likely inside; null without readings.</summary>
    public decimal? Reported => Values.Count == 0 ? null : Single is { } at ? Values[at] : Values.Average();

    /// <summary>The same as it was read, where something was applied here; null where nothing was.</summary>
    public decimal? ReportedAsRead => AsRead.Count == 0 ? null : Single is { } at ? AsRead[at] : AsRead.Average();

    /// <summary>How it was measured; empty without readings.</summary>
    public string Method => Readings.Count == 0 ? "" : Readings[0].Method;

    /// <summary>With what; empty where none is named.</summary>
    public string Instrument => Readings.Count == 0 ? "" : Readings[0].Instrument;

    /// <summary>What this line advises: hold where it is required and cannot be judged, or its instrument was out of check.</summary>
    public ReleaseAdvice? Advice => Outcome is { } outcome ? OutOfCheck.Length > 0 ? new ReleaseAdvice.Hold() : outcome.Advice : Item.Required ? new ReleaseAdvice.Hold() : null;

    // The reading that is judged by itself.
    private int? Single => Item.Rule == ResultRule.Single && Outcome is { } judged ? Values.Index().MinBy(v => Math.Abs((double)v.Item - judged.Judged)).Index : null;
}
