using System.Diagnostics.CodeAnalysis;
using Evengrist.Packing.Runs;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Packing.Boards;

/// <summary>Runs over lines as they were put in order, and how good that order is.</summary>
/// <param name="Start">The moment it begins.</param>
/// <param name="Runs">The runs, by line and start.</param>
/// <param name="Figures">What it comes to.</param>
/// <param name="FirstCome">The order in which orders were taken, beside it.</param>
/// <param name="EarliestDue">The order of due times, beside it.</param>
/// <param name="IsProven">Whether no order costs less.</param>
/// <param name="GapPercent">By how much of its cost a better one may cost less; 0 where proven.</param>
/// <param name="Said">Why the solver stopped, in words.</param>
/// <param name="SolverSeconds">How long it took.</param>
public sealed record PackingPlan(Instant Start, IReadOnlyList<PlannedRun> Runs, PlanFigures Figures, PlanFigures FirstCome, PlanFigures EarliestDue, bool IsProven, double GapPercent, string Said, double SolverSeconds)
{
    /// <summary>Kind of its paper.</summary>
    public const string PaperKind = "packing-plan";

    /// <summary>Bins that would be full with all the mill makes, and when.</summary>
    public IReadOnlyList<FullBin> Full { get; init; } = [];

    /// <summary>The flour bins as they stood and as they are filled.</summary>
    public IReadOnlyList<FlourBin> Bins { get; init; } = [];

    /// <summary>Orders with no run in it, and why.</summary>
    public IReadOnlyList<LeftOut> LeftOut { get; init; } = [];

    /// <summary>Why it was kept.</summary>
    public string Why { get; init; } = "";

    /// <summary>When the last run ends; the start where there is none.</summary>
    public Instant End => Runs.Count == 0 ? Start : Runs.Max(r => r.Until);

    /// <summary>What lies in a bin at a moment of the plan, tonnes: what lay there, with what the mill makes into it, less what its runs draw evenly.</summary>
    public double Level(FlourBin bin, Instant at)
    {
        ArgumentNullException.ThrowIfNull(bin);
        var minute = (int)Math.Round((at - Start).TotalMinutes);
        return bin.Tonnes + bin.Inflows.Sum(i => i.By(minute))
            - Runs.Where(r => r.Bin == bin.Code).Sum(r => (double)Mass.FromGrams(r.Grams).Tonnes * Math.Clamp((at - r.From) / (r.Until - r.From), 0, 1));
    }

    /// <summary>A solved order of posed runs.</summary>
    public static PackingPlan Of(PosedRuns posed, RunOrderSolved solved)
    {
        ArgumentNullException.ThrowIfNull(posed);
        ArgumentNullException.ThrowIfNull(solved);
        Instant At(int minute) => posed.Start + Duration.FromMinutes(minute);
        return new(
            posed.Start, [.. solved.Plan.Runs.Select(r => posed.Run(r, At(r.Start), At(r.End)))], PlanFigures.Of(posed.Spec, solved.Plan), PlanFigures.Of(posed.Spec, PlainOrder.FirstCome(posed.Spec)),
            PlanFigures.Of(posed.Spec, PlainOrder.EarliestDue(posed.Spec)), solved.IsProven, Math.Round(100 * solved.Gap, 2), solved.Said, Math.Round(solved.Took.TotalSeconds, 2))
        {
            Full = [.. solved.Choked.Select(c => new FullBin(c.Bin, At(c.Minute)))], Bins = posed.Spec.Bins, LeftOut = posed.LeftOut,
        };
    }

    /// <summary>What is wrong with it, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() => Runs.Any(r => r.Until <= r.From || r.Grams <= 0) ? ["Each run packs something and ends after it begins."] : [];

    /// <summary>It as JSON.</summary>
    public string ToJson() => PackingJson.Write(this);

    /// <summary>Reads one and checks it; each fault a sentence.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out PackingPlan? plan, out IReadOnlyList<string> faults) => PackingJson.TryRead(json, p => p.Faults(), out plan, out faults);
}

/// <summary>A bin that would be full: the mill would choke.</summary>
/// <param name="Bin">Code of the bin.</param>
/// <param name="At">When.</param>
public sealed record FullBin(string Bin, Instant At);

/// <summary>An order with no run in a plan.</summary>
/// <param name="Order">Number of the order.</param>
/// <param name="Why">Why, a sentence.</param>
public sealed record LeftOut(string Order, string Why);
