using System.Globalization;
using Evengrist.Laboratory.Calibration;
using Evengrist.Laboratory.Samples;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Laboratory;

/// <summary>A named person records what a kept calibration read of spectra, each on the sample whose number it has. They stand beside what was read before; none is replaced.</summary>
/// <param name="Key">Of the entry, so that the same sent twice is one.</param>
/// <param name="With">The version that read them.</param>
/// <param name="Read">Of each spectrum: number of the sample, value, one standard uncertainty, in what it lies outside the calibration.</param>
/// <param name="Method">The method they are recorded by, as in the table of methods.</param>
/// <param name="Instrument">The instrument that took the spectra.</param>
/// <param name="Measured">When.</param>
/// <param name="Reason">Why odd results, or those of an instrument out of check, are taken; empty where nothing was asked.</param>
public sealed record RecordSpectra(string Key, KeptCalibration With, IReadOnlyList<(string Sample, double Value, double StandardUncertainty, IReadOnlyList<string> Outside)> Read, string Method, string Instrument, Instant Measured, string Reason = "")
{
    private CalibrationPurpose Purpose => With.Calibration.Purpose;

    private Property What => Readings.Called(Purpose.Property.Trim());

    private Basis Basis => Basis.TryParse(Purpose.Basis, out var basis) ? basis : default;

    /// <summary>What stands against them; empty where they can be taken. Questions are answered by a reason.</summary>
    public IReadOnlyList<Objection> Objections(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        if (What == Property.None)
        {
            return [new Objection($"The calibration is for \"{Purpose.Property}\", which is no property of readings: it cannot be recorded.", false)];
        }

        var model = new ResultModel(KeepLabMethods.Newest(mill).Methods, InstrumentChecks.Standings(mill, Measured));
        return
        [
            .. Read.GroupBy(r => r.Sample.Trim(), StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1).Select(g => new Objection($"Sample {g.Key} stands there {g.Count()} times: one spectrum for each, or record them one after the other.", false)),
            .. mill.Ask(view => Entries().SelectMany(e => e.Entry.Against(view.Book, model)).Distinct().ToArray()),
        ];
    }

    /// <summary>Records them where nothing stands against them, or only questions that the reason answers.</summary>
    /// <returns>What became of them, null where they were not recorded; and everything against them.</returns>
    /// <exception cref="LedgerRefusal">The ledger refuses them; nothing was recorded.</exception>
    public (Receipt? Receipt, IReadOnlyList<Objection> Objections) In(Mill mill, string by, Instant? recorded = null)
    {
        var objections = Objections(mill);
        return objections.Any(o => !o.IsQuestion || Reason.Trim().Length == 0) ? (null, objections)
            : (mill.Record(view => [.. Entries().SelectMany(e => e.Entry.Drafts(view.Book, null).OfType<Measure>().Select(m => Marked(m, e.Read, objections)))], by, TakeLabSample.Source, recorded), objections);
    }

    // What lies outside is known by its method: no specification asks for it, and no lot is judged by it.
    private Measure Marked(Measure m, (string Sample, double Value, double StandardUncertainty, IReadOnlyList<string> Outside) read, IReadOnlyList<Objection> objections) => m with
    {
        Method = read.Outside.Count > 0 ? m.Method + SpectralReading.OutsideMark : m.Method,
        StandardUncertainty = Math.Round((decimal)read.StandardUncertainty, 4),
        Note = string.Join(" ", new[]
        {
            string.Create(CultureInfo.InvariantCulture, $"By calibration {With.Code}, version {With.Version}."),
            read.Outside.Count > 0 ? $"Outside it: {string.Join(", ", read.Outside)}. Releases and prices nothing; ask the reference method." : "",
            EnterResults.Note(objections, Reason) ?? "",
        }.Where(w => w.Length > 0)),
    };

    private IEnumerable<(EnterResults Entry, (string Sample, double Value, double StandardUncertainty, IReadOnlyList<string> Outside) Read)> Entries() => Read.Select(r =>
        (new EnterResults($"{Key} {r.Sample.Trim()}", r.Sample, [new ResultEntry(What, Method.Trim(), Instrument.Trim(), [Math.Round((decimal)r.Value, 3)], Purpose.Unit, Basis)], Measured), r));
}
