using Evengrist.Laboratory.Watch;
using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Records.Laboratory;
using NodaTime;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>The ledger's pairs of one instrument, judged as of a moment.</summary>
/// <param name="Choices">What can be watched: key, words, count of pairs.</param>
/// <param name="Chosen">Key of what is shown; empty where there is nothing.</param>
/// <param name="Place">Code of the place.</param>
/// <param name="Found">Its pairs; null where there is nothing.</param>
/// <param name="Spec">What was asked of the model; null where something typed cannot be.</param>
/// <param name="Outcome">What the pairs say; null with it.</param>
/// <param name="LastSet">The bias as last set before the moment; null where none is recorded.</param>
public sealed record WatchSight(IReadOnlyList<(string Key, string Words, int Pairs)> Choices, string Chosen, string Place, PairedReadings? Found, WatchSpec? Spec, WatchOutcome? Outcome, BiasSetting? LastSet)
{
    /// <summary>Looks.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="ask">What is asked; takes the faults.</param>
    /// <param name="from">Pairs from here on; null for all since the bias was last set.</param>
    /// <param name="at">What was read later is left out.</param>
    public static WatchSight Of(Mill mill, WatchAsk ask, Instant? from, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(ask);
        var biases = InstrumentBiases.All(mill).Select(b => b.Setting).Where(b => b.At <= at).ToArray();
        var all = mill.Ask(view => view.Book.Readings.Where(r => r.At <= at).GroupBy(r => r.On).SelectMany(g => PairedReadings.Among([.. g], ask.Span))
            .Select(p => (Place: view.Book[p.On].Code, Found: p)).Select(p => (p.Place, p.Found, Key: Key(p.Place, p.Found))).ToArray());
        (string, string, int)[] choices = [.. all.Select(a => (a.Key, $"{a.Found.What.Words()} of {a.Place}: {a.Found.Instrument.Words} against {a.Found.Reference.Words}", a.Found.Pairs.Count)).OrderByDescending(c => c.Item3)];
        var chosen = choices.Length == 0 ? "" : ask.Chosen.Length == 0 ? choices[0].Item1 : choices.Select(c => c.Item1).FirstOrDefault(k => k == ask.Chosen) ?? "";
        if (chosen.Length == 0)
        {
            if (ask.Chosen.Length > 0 && choices.Length > 0)
            {
                ask.Fields.Fault($"“{ask.Chosen}” cannot be watched by then: choose from the list.");
            }

            return new(choices, "", "", null, null, null, null);
        }

        var one = all.First(a => a.Key == chosen);
        var set = biases.FirstOrDefault(b => b.Code == BiasSetting.CodeOf(one.Found.Instrument.Instrument, one.Found.What));
        var found = one.Found with { Pairs = [.. one.Found.Pairs.Where(p => p.Instrument.At >= (from ?? set?.At ?? Instant.MinValue))] };
        var spec = ask.Spec(found);
        return new(choices, chosen, one.Place, found, spec, spec is null ? null : WatchModel.Of(spec), set);
    }

    /// <summary>Where the lots of the window are judged again; null where the instrument is not convicted of a step.</summary>
    /// <param name="field">A moment as the page's fields take it.</param>
    public string? Rejudge(Func<Instant, string> field) => Outcome is { Verdict: WatchVerdict.Instrument or WatchVerdict.Both, Change: { Cause: not WatchCause.InstrumentDrift, After: { } after, Size: { } size, SizeDeviation: { } deviation } } && Found is { } f
        ? FormattableString.Invariant($"/laboratory/rejudge?instrument={Uri.EscapeDataString(f.Instrument.Instrument)}&property={f.What}&from={field(f.Pairs[Math.Max(0, after - 1)].Instrument.At)}&until={field(f.Pairs[^1].Instrument.At)}&bias={size:0.###}&pm={2 * deviation:0.###}") : null;

    private static string Key(string place, PairedReadings p) => $"{place}|{p.What}|{p.Reference.Words}|{p.Instrument.Words}|{p.Reference.Basis}";
}
