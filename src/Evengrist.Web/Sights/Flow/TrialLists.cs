using Evengrist.Milling.Learning;
using Evengrist.Milling.OnPaper;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Milling;
using Evengrist.Records.Streams;
using Evengrist.Web.Sights.Lists;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Flow;

/// <summary>A trial of a mill unit on paper as lists: its products and its passages.</summary>
public static class TrialLists
{
    private const string Page = "/milling/trial";

    /// <summary>Both.</summary>
    public static IReadOnlyList<PageList> All { get; } =
    [
        PageList.Answer(Page, "trial-products", "A trial on paper: what each product is to be expected to be, and what is tried would change", new ListOf<(string Unit, SetForecast Now, SetForecast? Change)>()
                .Text("mill unit", r => r.Unit).Text("product", r => r.Now.Name).Text("basis of ash and protein", _ => TrialWords.Shown.ToString())
                .Reckoned("yield, of the wheat to first break", ListUnit.Percent, r => r.Now.YieldPercent.Value).Reckoned("one standard uncertainty of the yield", ListUnit.Percent, r => r.Now.YieldPercent.Uncertainty).Reckoned("change of the yield", ListUnit.Percent, r => r.Change?.YieldPercent.Value).Reckoned("one standard uncertainty of that change", ListUnit.Percent, r => r.Change?.YieldPercent.Uncertainty)
                .Reckoned("ash", ListUnit.Percent, r => TrialWords.OnBasis(r.Now.AshPercentDry).Value).Reckoned("one standard uncertainty of the ash", ListUnit.Percent, r => TrialWords.OnBasis(r.Now.AshPercentDry).Uncertainty).Reckoned("change of the ash", ListUnit.Percent, r => OnBasis(r.Change?.AshPercentDry)?.Value).Reckoned("one standard uncertainty of the ash's change", ListUnit.Percent, r => OnBasis(r.Change?.AshPercentDry)?.Uncertainty)
                .Reckoned("protein", ListUnit.Percent, r => TrialWords.OnBasis(r.Now.ProteinPercentDry).Value).Reckoned("one standard uncertainty of the protein", ListUnit.Percent, r => TrialWords.OnBasis(r.Now.ProteinPercentDry).Uncertainty).Reckoned("change of the protein", ListUnit.Percent, r => OnBasis(r.Change?.ProteinPercentDry)?.Value).Reckoned("one standard uncertainty of the protein's change", ListUnit.Percent, r => OnBasis(r.Change?.ProteinPercentDry)?.Uncertainty),
            (visit, context) => Of(visit, context, (unit, trial) => trial.Now!.Products.Append(trial.Now.Flour).Select((p, i) => (unit, p, trial.Change is { } change ? change.Products.Append(change.Flour).ElementAtOrDefault(i) : null)))),
        PageList.Answer(Page, "trial-passages", "A trial on paper: load and release of each passage, and what is tried would change", new ListOf<(string Unit, PassageForecast Now, PassageForecast? Change)>()
                .Text("mill unit", r => r.Unit).Text("passage", r => r.Now.Code).Reckoned("load of dry matter", ListUnit.TonnesPerHour, r => r.Now.DryTonnesPerHour.Value).Reckoned("one standard uncertainty of the load", ListUnit.TonnesPerHour, r => r.Now.DryTonnesPerHour.Uncertainty).Reckoned("change of the load", ListUnit.TonnesPerHour, r => r.Change?.DryTonnesPerHour.Value)
                .Reckoned("release, of its feed", ListUnit.Percent, r => r.Now.ReleasePercent?.Value).Reckoned("one standard uncertainty of the release", ListUnit.Percent, r => r.Now.ReleasePercent?.Uncertainty).Reckoned("change of the release", ListUnit.Percent, r => r.Change?.ReleasePercent?.Value),
            (visit, context) => Of(visit, context, (unit, trial) => trial.Now!.Passages.Select((p, i) => (unit, p, trial.Change?.Passages[i])))),
    ];

    /// <summary>Reckons what is asked, by what the tests tell of the mill.</summary>
    public static (MillTuning Tuned, IReadOnlyList<string> Untold, MillTrial Trial) Reckon(MillTunings tunings, KeptFlowSheet kept, TrialAsk ask)
    {
        ArgumentNullException.ThrowIfNull(tunings);
        ArgumentNullException.ThrowIfNull(kept);
        ArgumentNullException.ThrowIfNull(ask);
        var (tuned, untold) = tunings.OrNone(kept.Sheet, ask.Tests);
        return (tuned, untold, MillTrial.Of(kept.Sheet, ask.Tries ? ask.Change : null, ask.Wheat!.Of(), ask.OtherWheat?.Of(), tuned, ask.Sets, ask.Prices));
    }

    private static Estimate? OnBasis(Estimate? dry) => dry is { } of ? TrialWords.OnBasis(of) : null;

    private static (IEnumerable<T>? Rows, string Why) Of<T>(Visit visit, HttpContext context, Func<string, MillTrial, IEnumerable<T>> rows)
    {
        if (FlowSheets.Asked(visit.Mill, context.Request.Query.Typed("unit")) is not { } kept)
        {
            return (null, "No flow sheet to try on: keep a unit's flow sheet under Milling first.");
        }

        var (history, tunings) = (MillTestHistory.Of(visit.Mill, kept.Unit, visit.AsOf), context.RequestServices.GetRequiredService<MillTunings>());
        var ask = new TrialAsk(context.Request.Query.Typed, kept.Sheet, StreamSurveys.Newest(visit.Mill, kept.Unit), history);
        if (ask.Wheat is null || ask.Fields.Faults.Count > 0)
        {
            return (null, string.Join(" ", ask.Fields.Faults));
        }

        if (tunings.Work(context.RequestServices.GetRequiredService<WorkShelf>(), ask.MarkOf(history), ask.Tests) is { IsRunning: true })
        {
            return (null, StillReckoning.Words);
        }

        var trial = Reckon(tunings, kept, ask).Trial;
        return trial.Now is null ? (null, string.Join(" ", trial.Unsolved)) : (rows(kept.Unit, trial), "");
    }
}
