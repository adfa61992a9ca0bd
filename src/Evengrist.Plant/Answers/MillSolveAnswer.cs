using Evengrist.Milling.Draws;
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
/// <param name="Draws">Mills drawn; null where none were asked for.</param>
/// <param name="Remarks">What must be said with it.</param>
public sealed record MillSolveAnswer(
    string Exit, int Sweeps, double Closure, string Tuned, string Basis, IReadOnlyList<MillPassageAnswer> Passages, IReadOnlyList<MillProductAnswer> Products, MillChangeAnswer? Change,
    MillDrawsAnswer? Draws, IReadOnlyList<string> Remarks)
{
    /// <summary>The caution wherever a person could act on a gap.</summary>
    public const string Caution = "Roll nips crush: guards stay shut, and nobody reaches in while rolls turn. Lock out and test for no power before guards come off; local code and the machine's own instructions rule. This is advice on paper: a named person sets the mill.";

    /// <summary>What is said of a mill of which nothing was measured.</summary>
    public const string NotTuned = "Not tuned: the model's figures are ours, the directions published; each ± is what is thought before data. A release test or a survey of this mill shrinks it.";

    /// <summary>Answers a case, or says why there is no answer.</summary>
    /// <param name="posed">The case.</param>
    /// <param name="draw">Draws mills, where the case asks for it.</param>
    public static Reply<MillSolveAnswer> To(MillSolveCase posed, Func<DrawsSpec, DrawsOutcome> draw)
    {
        ArgumentNullException.ThrowIfNull(posed);
        ArgumentNullException.ThrowIfNull(draw);
        var (tuning, reasons) = MillFitAnswer.Tuning(posed);
        if (tuning is null)
        {
            return new Reply<MillSolveAnswer>(null, reasons);
        }

        var trial = MillTrial.Of(posed.FlowSheet, posed.Try, posed.Wheat.Of(), posed.TryWheat?.Of(), tuning, posed.Sets, posed.PricePerTonne);
        if (trial.Now is null)
        {
            return new Reply<MillSolveAnswer>(null, trial.Unsolved);
        }

        if (posed.Samples is not { } samples)
        {
            return new Reply<MillSolveAnswer>(Of(posed, tuning, trial, null), []);
        }

        var spec = new DrawsSpec(posed.FlowSheet, posed.Wheat.Of(), tuning) { Try = posed.Try, OtherWheat = posed.TryWheat?.Of(), Sets = posed.Sets, PricePerTonne = posed.PricePerTonne, Draws = samples, Seed = posed.Seed };
        return draw(spec) switch
        {
            MillsDrawn drawn => new Reply<MillSolveAnswer>(Of(posed, tuning, trial, MillDrawsAnswer.Of(drawn, trial, posed.Basis)), []),
            MillsNotDrawn not => new Reply<MillSolveAnswer>(null, not.Reasons),
            DrawsStopped stopped => new Reply<MillSolveAnswer>(null, [$"It was stopped when {stopped.Draws} mills were drawn: too few to say anything."]),
            var other => throw new InvalidOperationException($"Draws ended as {other.GetType().Name}."),
        };
    }

    private static MillSolveAnswer Of(MillSolveCase posed, MillTuning tuning, MillTrial trial, MillDrawsAnswer? draws)
    {
        var (b, now, change) = (posed.Basis, trial.Now!, trial.Change);
        var report = now.Solution.Report;
        return new MillSolveAnswer(
            $"{report.Exit}", report.Sweeps, report.Closure, MillFitAnswer.TunedOrNot(tuning),
            b.ToString(), [.. now.Solution.Passages.Zip(now.Passages, (s, p) => MillPassageAnswer.Of(s, p, b))], [.. now.Products.Append(now.Flour).Select(p => MillProductAnswer.Of(p, b, now.Solution.Products.FirstOrDefault(s => s.Product.Code == p.Name)))],
            change is null ? null : new MillChangeAnswer(
                [.. change.Passages.Select(p => new MillPassageChangeAnswer(p.Code, PlusMinus.Of(p.DryTonnesPerHour), p.ReleasePercent is { } r ? PlusMinus.Of(r) : null))],
                [.. change.Products.Append(change.Flour).Select(p => MillProductAnswer.Of(p, b, null))], change.MoneyPerDay is { } money ? PlusMinus.Of(money) : null, PlusMinus.Of(trial.Work!.Kilowatts), PlusMinus.Of(trial.Work.KilowattHoursPerTonne)),
            draws,
            [
                .. tuning.IsTuned ? Array.Empty<string>() : [NotTuned],
                "Damaged starch, falling number and the work of rolls are not tuned.", Caution,
            ]);
    }
}
