using System.Globalization;
using Evengrist.Laboratory.Samples;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Laboratory;

/// <summary>A named person enters results of a sample. They stand beside what was entered before; none is replaced.</summary>
/// <param name="Key">Of the entry, so that the same sent twice is one.</param>
/// <param name="Sample">Number of the sample.</param>
/// <param name="Entries">The results.</param>
/// <param name="Measured">When they were made; not before the sample.</param>
/// <param name="Reason">Why odd results, or those of an instrument out of check, are taken; empty where nothing was asked.</param>
public sealed record EnterResults(string Key, string Sample, IReadOnlyList<ResultEntry> Entries, Instant Measured, string Reason = "")
{
    /// <summary>What stands against them; empty where they can be taken. Questions are answered by a reason.</summary>
    public IReadOnlyList<Objection> Objections(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var model = new ResultModel(KeepLabMethods.Newest(mill).Methods, InstrumentChecks.Standings(mill, Measured));
        return mill.Ask(view => Against(view.Book, model));
    }

    /// <summary>Records them where nothing stands against them, or only questions that the reason answers.</summary>
    /// <returns>What became of them, null where they were not recorded; and everything against them.</returns>
    /// <exception cref="LedgerRefusal">The ledger refuses them; nothing was recorded.</exception>
    public (Receipt? Receipt, IReadOnlyList<Objection> Objections) In(Mill mill, string by, Instant? recorded = null)
    {
        var objections = Objections(mill);
        if (objections.Any(o => !o.IsQuestion || Reason.Trim().Length == 0))
        {
            return (null, objections);
        }

        return (mill.Record(view => Drafts(view.Book, Note(objections, Reason)), by, TakeLabSample.Source, recorded), objections);
    }

    /// <summary>What is kept with a result that something was asked about; null where nothing was.</summary>
    internal static string? Note(IEnumerable<Objection> objections, string reason)
    {
        var note = string.Join(" ", objections.Select(o => o.Words).Append(reason.Trim().Length > 0 ? $"Taken because: {reason.Trim()}." : "").Where(w => w.Length > 0));
        return note.Length > 0 ? note : null;
    }

    /// <summary>As facts of the ledger; the sample is known.</summary>
    internal IReadOnlyList<Draft> Drafts(Book book, string? note)
    {
        var sample = TakenSample.Find(book, Sample, Instant.MaxValue)!;
        return [.. Entries.SelectMany(e => e.Values.Select((value, i) => new Measure(
            string.Create(CultureInfo.InvariantCulture, $"{Key} {e.What} {e.Method} {e.Instrument} {i + 1}"), sample.Place.Code, sample.At, e.What, value, e.Unit, e.Basis, e.Method.Trim(), e.Instrument.Trim()) { Note = note }))];
    }

    internal IReadOnlyList<Objection> Against(Book book, ResultModel model) => TakenSample.Find(book, Sample, Instant.MaxValue) is not { } sample
        ? [new Objection($"There is no sample \"{Sample}\". Look for a typing error, or record that it was taken.", false)]
        : Entries.Count == 0 ? [new Objection($"Sample {sample.Sample.Code}: there is no result. Type at least one.", false)]
        : [.. Entries.SelectMany(e => model.Against(e, sample.At, Measured, LastOf(book, sample, new SampleTest(e.What, e.Method)))).Distinct()];

    /// <summary>The last readings of a test on the place of a sample, before it, newest first.</summary>
    public static IReadOnlyList<Reading> LastOf(Book book, TakenSample sample, SampleTest test)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(sample);
        return [.. book.ReadingsOn(sample.Place.Id).Reverse().Where(r => r.At < sample.At && test.Is(r)).Take(ResultModel.LastCount)];
    }
}
