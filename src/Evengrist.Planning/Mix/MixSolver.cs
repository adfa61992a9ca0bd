using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Mix;
using Evengrist.Planning.Solving;
using Evengrist.Quantities;

namespace Evengrist.Planning.Mix;

/// <summary>Finds the mix of least cost that keeps every limit, or says what clashes. Model: docs/model/mix.md.</summary>
public static class MixSolver
{
    /// <summary>Solves a mix.</summary>
    /// <param name="spec">What is wanted.</param>
    /// <param name="options">How hard it is sought; the usual by default.</param>
    /// <param name="stop">Stops it.</param>
    public static MixOutcome Solve(MixSpec spec, MixSearchOptions? options = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(spec);
        options ??= new MixSearchOptions();
        var faults = MixSpecCheck.Faults(spec);
        if (faults.Count > 0)
        {
            return new MixRefused(faults);
        }

        var (refused, remarks) = BlendDown.Of(spec);
        if (refused.Count > 0)
        {
            spec = spec with { Bins = [.. spec.Bins.Where(b => refused.All(r => r.Bin != b.Code))] };
            if (spec.Bins.Count == 0)
            {
                return new MixRefused([.. refused.Select(r => r.Reason), "No bin is left to mix from."]);
            }
        }

        var search = new MixSearch(spec, options);
        var free = search.Best(gates: false, stop: stop);
        var best = free.IsThere ? search.Best(gates: true, stop: stop) : free;
        if (!best.IsThere)
        {
            return best.Exit == ExitReason.Infeasible && new ClashFinder(spec, options, stop).Find(refused) is { } clash
                ? clash : new MixNotSolved(Said(best.Exit));
        }

        return MixCheck.Broken(spec, best.Shares) is { Count: > 0 } broken
            ? new MixNotSolved($"The solver's answer did not pass the check and is not shown: {string.Join(" ", broken)}")
            : Report(spec, options, free, best, refused, remarks, stop);
    }

    private static MixSolved Report(
        MixSpec spec, MixSearchOptions options, Found free, Found best, IReadOnlyList<LeftOut> refused, IReadOnlyList<string> remarks, CancellationToken stop)
    {
        (MixBin Bin, double Share)[] parts = [.. spec.Bins.Zip(best.Shares)], freely = [.. spec.Bins.Zip(free.Shares)];
        var wheat = Wheat(spec, parts);
        var sure = spec.Limits.Any(l => l.Confidence > 0.5);
        var unsure = sure ? new MixSearch(spec with { Limits = [.. spec.Limits.Select(l => l with { Confidence = null })] }, options).Best(gates: true, best.Shares, stop) : null;
        var gates = spec.StepShare is not null || spec.Gates.MostGates < spec.Bins.Count || spec.LeastOpen > 0;
        return new MixSolved(GatesOf(spec, parts), MixCost.Of(parts))
        {
            ByYear = spec.ByYear, Gap = best.Gap, Wheat = wheat,
            Flour = [.. spec.Relations.Select(r => MixBlend.WheatOf(parts, r.What, r.WheatBasis) is { } w ? MixBlend.FlourOf(w, r) : null).OfType<Predicted>()],
            Limits = HeadroomModel.Of(spec, parts),
            Savings = new Savings(spec, options, stop).Of(best, freely, parts),
            PriceOfConfidence = unsure is { IsThere: true } ? Math.Max(0, best.Cost - unsure.Cost) : null,
            PriceOfGates = gates ? Math.Max(0, best.Cost - free.Cost) : null,
            Habit = HabitOf(spec),
            LeftOut = refused,
            Remarks = [.. remarks, .. Remarks(spec, parts)],
        };
    }

    private static Predicted[] Wheat(MixSpec spec, (MixBin Bin, double Share)[] parts) =>
    [
        .. BlendRules.All.Where(r => parts.Where(p => p.Share > 0).All(p => p.Bin.Values.ContainsKey(r.What)))
            .Select(r => MixBlend.WheatOf(parts, r.What, BasisOf(spec, parts, r.What))).OfType<Predicted>(),
    ];

    // As the limit of the wheat says it, or else as the bins' own values are given.
    private static Basis BasisOf(MixSpec spec, (MixBin Bin, double Share)[] parts, Property what) =>
        spec.Limits.FirstOrDefault(l => l.What == what && l.On == LimitOn.Wheat)?.Basis ?? spec.Relations.FirstOrDefault(r => r.What == what)?.WheatBasis ?? parts.First(p => p.Share > 0).Bin.Values[what].Basis;

    private static GateShare[] GatesOf(MixSpec spec, (MixBin Bin, double Share)[] parts) =>
        [.. parts.Where(p => p.Share > 0).OrderByDescending(p => p.Share).ThenBy(p => p.Bin.Code, StringComparer.Ordinal).Select(p => new GateShare(p.Bin, p.Share, p.Share * spec.RateTonnesPerHour))];

    private static HabitSight? HabitOf(MixSpec spec)
    {
        // A habit that draws from a refused bin cannot be shown as one that could still be set.
        if (spec.Habit is not { } habit || habit.Keys.Any(c => spec.Bins.All(b => b.Code != c)))
        {
            return null;
        }

        (MixBin Bin, double Share)[] parts = [.. spec.Bins.Select(b => (b, habit.GetValueOrDefault(b.Code)))];
        return new HabitSight(GatesOf(spec, parts), MixCost.Of(parts), HeadroomModel.Of(spec, parts));
    }

    private static IEnumerable<string> Remarks(MixSpec spec, (MixBin Bin, double Share)[] parts)
    {
        foreach (var (bin, _) in parts.Where(p => p.Share > 0 && p.Bin.Values.GetValueOrDefault(Property.FallingNumber)?.Value < 60))
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"{bin.Code} has a falling number of {bin.Values[Property.FallingNumber].Value:0} s: below 60 s the liquefaction number is not to be trusted.");
        }

        if (spec.ByYear && spec.Bins.Where(b => b.YearValuePerTonne is null).Select(b => b.Code).ToArray() is { Length: > 0 } without)
        {
            yield return $"No value to the year is known for {string.Join(", ", without)}: they count at today's cost.";
        }

        foreach (var relation in spec.Relations.Where(r => !r.IsFitted && spec.Limits.Any(l => l.On == LimitOn.Flour && l.What == r.What)))
        {
            yield return $"Not fitted on this mill: {relation.Words}.";
        }

        foreach (var beyond in MixBlend.Beyond(parts, spec.Relations))
        {
            yield return beyond;
        }
    }

    private static string Said(ExitReason exit) => exit switch
    {
        ExitReason.TimeReached => "Time ran out before an answer was found.",
        ExitReason.Cancelled => "It was stopped before an answer was found.",
        ExitReason.Unbounded => "The cost falls without end: a cost or a limit is missing.",
        ExitReason.Infeasible => "The solver found no answer even without any limit: a fault of the program.",
        _ => "The solver gave up.",
    };
}
