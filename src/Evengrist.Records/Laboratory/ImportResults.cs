using Evengrist.Laboratory.Methods;
using Evengrist.Laboratory.Samples;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Laboratory;

/// <summary>Results of a file, taken as a whole or not at all. The same rows again add nothing; rows alike are duplicates.</summary>
/// <param name="Rows">Each with its line, the number of its sample, when it was measured, and one value.</param>
/// <param name="Reason">Why what is asked about is taken; empty where nothing was.</param>
public sealed record ImportResults(IReadOnlyList<(int Line, string Sample, Instant Measured, ResultEntry Entry)> Rows, string Reason = "")
{
    /// <summary>Everything against the rows, each with its line; empty where nothing is.</summary>
    public IReadOnlyList<(int Line, Objection Objection)> Objections(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var (methods, instruments, checks) = (KeepLabMethods.Newest(mill).Methods, KeepLabInstruments.Newest(mill).Instruments, InstrumentChecks.All(mill));
        var models = Rows.Select(r => r.Measured).Distinct().ToDictionary(at => at, at => new ResultModel(methods, [.. instruments.Instruments.Select(i => InstrumentStanding.Of(i, checks.Select(c => c.Check), at))]));
        return mill.Ask(view => Rows.SelectMany(r => new EnterResults("", r.Sample, [r.Entry], r.Measured).Against(view.Book, models[r.Measured]).Select(o => (r.Line, o))).ToArray());
    }

    /// <summary>Records them where nothing stands against them, or only questions that the reason answers.</summary>
    /// <returns>What became of them, null where they were not recorded; and everything against them.</returns>
    /// <exception cref="LedgerRefusal">The ledger refuses them, or a row differs from one brought in before; nothing was recorded.</exception>
    public (Receipt? Receipt, IReadOnlyList<(int Line, Objection Objection)> Objections) In(Mill mill, string by, Instant? recorded = null)
    {
        var objections = Objections(mill);
        if (objections.Any(o => !o.Objection.IsQuestion || Reason.Trim().Length == 0))
        {
            return (null, objections);
        }

        var asked = objections.ToLookup(o => o.Line, o => o.Objection);
        return (mill.Record(view => [.. Entries().SelectMany(e => e.Entry.Drafts(view.Book, asked[e.Line].Any() ? EnterResults.Note(asked[e.Line], Reason) : null))], by, TakeLabSample.Source, recorded), objections);
    }

    // The key says which value it is, not what it is: a changed value is another answer to the same question, and refused as such.
    private IEnumerable<(int Line, EnterResults Entry)> Entries() => Rows
        .GroupBy(r => (Sample: r.Sample.ToUpperInvariant(), r.Measured, r.Entry.What, r.Entry.Method, r.Entry.Instrument, r.Entry.Unit, r.Entry.Basis))
        .Select(g => (g.First().Line, new EnterResults($"file {g.Key.Sample} {g.Key.Measured}", g.First().Sample, [g.First().Entry with { Values = [.. g.SelectMany(r => r.Entry.Values)] }], g.Key.Measured)));
}
