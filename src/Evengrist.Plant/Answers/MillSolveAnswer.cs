using Evengrist.Milling.Learning;
using Evengrist.Milling.OnPaper;
using Evengrist.Plant.Cases;

namespace Evengrist.Plant.Answers;

/// <summary>A mill as it is to be expected, and where something was to be tried, what would change. Every ± is k = 2.</summary>
/// <param name="Exit">How solving ended.</param>
/// <param name="Sweeps">Sweeps over the loops.</param>
/// <param name="Closure">Most that a part's products differ from its feed, as a share of the wheat.</param>
/// <param name="Tuned">Whether the mill is tuned, and on how many figures.</param>
/// <param name="Basis">Moisture basis of ash and protein.</param>
/// <param name="Passages">By passage.</param>
/// <param name="Products">By product, then the sets asked for, then all flour.</param>
/// <param name="Change">What the settings tried would change; null where none were.</param>
/// <param name="Remarks">What must be said with it.</param>
public sealed record MillSolveAnswer(
    string Exit, int Sweeps, double Closure, string Tuned, string Basis, IReadOnlyList<MillPassageAnswer> Passages, IReadOnlyList<MillProductAnswer> Products, MillChangeAnswer? Change, IReadOnlyList<string> Remarks)
{
    /// <summary>The caution wherever a person could act on a gap.</summary>
    public const string Caution = "Roll nips crush: guards stay shut, and nobody reaches in while rolls turn. Lock out and test for no power before guards come off; local code and the machine's own instructions rule. This is advice on paper: a named person sets the mill.";

    /// <summary>Answers a case, or says why there is no answer.</summary>
    public static Reply<MillSolveAnswer> To(MillSolveCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        var tuning = MillTuning.None(posed.FlowSheet);
        if (posed.Tests.Count > 0)
        {
            switch (MillFit.Of(posed.MillTests))
            {
                case MillTuned tuned: tuning = tuned.Tuning; break;
                case MillNotTuned not: return new Reply<MillSolveAnswer>(null, not.Reasons);
            }
        }

        var trial = MillTrial.Of(posed.FlowSheet, posed.Try, posed.Wheat.Of(), posed.TryWheat?.Of(), tuning, posed.Sets, posed.PricePerTonne);
        return trial.Now is { } now ? new Reply<MillSolveAnswer>(Of(posed, tuning, now, trial.Change), []) : new Reply<MillSolveAnswer>(null, trial.Unsolved);
    }

    private static MillSolveAnswer Of(MillSolveCase posed, MillTuning tuning, MillForecast now, MillChange? change)
    {
        var b = posed.Basis;
        var report = now.Solution.Report;
        return new MillSolveAnswer(
            $"{report.Exit}", report.Sweeps, report.Closure, tuning.IsTuned ? MillFitAnswer.Words(tuning) : "not tuned: enter a release test or a stream survey",
            b.ToString(), [.. now.Solution.Passages.Zip(now.Passages, (s, p) => MillPassageAnswer.Of(s, p, b))], [.. now.Products.Append(now.Flour).Select(p => MillProductAnswer.Of(p, b, now.Solution.Products.FirstOrDefault(s => s.Product.Code == p.Name)))],
            change is null ? null : new MillChangeAnswer(
                [.. change.Passages.Select(p => new MillPassageChangeAnswer(p.Code, PlusMinus.Of(p.DryTonnesPerHour), p.ReleasePercent is { } r ? PlusMinus.Of(r) : null))],
                [.. change.Products.Append(change.Flour).Select(p => MillProductAnswer.Of(p, b, null))], change.MoneyPerDay is { } money ? PlusMinus.Of(money) : null, change.RollKilowatts),
            [
                .. tuning.IsTuned ? Array.Empty<string>() : ["Not tuned: the model's figures are ours, the directions published; each ± is what is thought before data. A release test or a survey of this mill shrinks it."],
                "Damaged starch, falling number and the work of rolls are not tuned.", Caution,
            ]);
    }
}
