using Evengrist.Laboratory.Samples;
using Evengrist.Ledger;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Spectra;
using Evengrist.Records;
using Evengrist.Records.Laboratory;
using NodaTime;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>New spectra to be read with a kept calibration, and recorded on their samples where asked to; on the page and over HTTP.</summary>
public sealed class SpectraReadForm
{
    /// <summary><c>read</c> or <c>record</c>.</summary>
    public string? Do { get; set; }

    /// <summary>Version and code of the calibration, as <c>2 protein</c>.</summary>
    public string? With { get; set; }

    /// <summary>The spectra, where no file was chosen.</summary>
    public string? Text { get; set; }

    /// <summary>The file; it goes before the text.</summary>
    public IFormFile? File { get; set; }

    /// <summary>Made with the form, so that the same form sent twice is one.</summary>
    public string? Key { get; set; }

    /// <summary>The method they are recorded by.</summary>
    public string? Method { get; set; }

    /// <summary>The instrument that took them.</summary>
    public string? Instrument { get; set; }

    /// <summary>When they were taken, by the mill's clock.</summary>
    public string? Measured { get; set; }

    /// <summary>Why what was asked about is taken.</summary>
    public string? Reason { get; set; }

    /// <summary>The readings; null where there are faults.</summary>
    public PlsReadingsAnswer? Answer { get; private set; }

    /// <summary>Every fault.</summary>
    public IReadOnlyList<string> Faults { get; private set; } = [];

    /// <summary>What is asked before they are recorded.</summary>
    public IReadOnlyList<string> Questions { get; private set; } = [];

    /// <summary>Reads the spectra, and records them where asked to.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="measured">When, as read; null where it could not be.</param>
    /// <param name="by">Who; null or empty where nobody is named.</param>
    /// <param name="nameless">What is said then.</param>
    /// <returns>What became of them; null where nothing was recorded.</returns>
    public Receipt? Act(Mill mill, Instant? measured, string? by, string nameless)
    {
        (Text, var fault) = PostedText.Of(File, Text, "fewer spectra");
        var kept = AdjustForm.Kept(mill, With);
        Faults =
        [
            .. fault is null ? Array.Empty<string>() : [fault],
            .. kept is not null ? Array.Empty<string>() : ["Choose a calibration that is kept."],
            .. string.IsNullOrWhiteSpace(Text) && fault is null ? ["There are no spectra: choose a file, or paste its text."] : Array.Empty<string>(),
        ];
        if (Faults.Count > 0)
        {
            return null;
        }

        var read = SpectraTable.Read(Text!).Then(table => PlsReadingsAnswer.Of(kept!.Calibration, table));
        (Answer, Faults) = (read.Ok ? read.Value : null, [.. read.Faults.Select(f => $"{f}")]);
        if (Answer is null || Do != "record")
        {
            return null;
        }

        Faults = EntryFaults.Of(Key, measured, by, nameless);
        return Faults.Count > 0 ? null : Record(mill, kept!, Answer, measured!.Value, by!);
    }

    private Receipt? Record(Mill mill, KeptCalibration kept, PlsReadingsAnswer answer, Instant measured, string by)
    {
        try
        {
            var (receipt, objections) = new RecordSpectra(Key!, kept, [.. answer.Readings.Select(r => (r.Id, r.Value, r.StandardUncertainty, r.Outside))], Method ?? "", Instrument ?? "", measured, Reason ?? "").In(mill, by);
            if (receipt is null)
            {
                (Faults, Questions) = ([.. Words(objections, false)], [.. Words(objections, true)]);
            }

            return receipt;
        }
        catch (LedgerRefusal refusal)
        {
            Faults = [refusal.Message];
            return null;
        }
    }

    private static IEnumerable<string> Words(IReadOnlyList<Objection> objections, bool questions) => objections.Where(o => o.IsQuestion == questions).Select(o => o.Words);
}
