using MathNet.Numerics.Statistics;

namespace Evengrist.Packing.NetContent;

/// <summary>Net weights of a batch against the label by the three rules of the European Union: the mean, few below T1, none below T2. Directive 76/211/EEC. It decides nothing. Model: docs/model/net-content.md.</summary>
public static class BatchCheck
{
    /// <summary>Share of a batch weighed whole that may lie below T1 [from memory: the aim behind the plans].</summary>
    public const double WholeShare = 0.025;

    /// <summary>Judges a batch.</summary>
    /// <param name="label">What each package declares.</param>
    /// <param name="batch">Packages in the batch; fewer than <see cref="BatchPlan.LeastBatch"/> are weighed whole.</param>
    /// <param name="net">Net weights, grams: the first sample or the whole batch.</param>
    /// <param name="second">Net weights of the second sample, grams; empty where none was taken.</param>
    /// <param name="spoils">Whether testing spoils the package: then 20 of any batch that is sampled are.</param>
    /// <exception cref="ArgumentException">Another number of weights than the plan's.</exception>
    public static BatchFinding Of(NetLabel label, int batch, IReadOnlyList<double> net, IReadOnlyList<double> second, bool spoils = false)
    {
        ArgumentNullException.ThrowIfNull(label);
        ArgumentNullException.ThrowIfNull(net);
        ArgumentNullException.ThrowIfNull(second);
        var plan = PlanOf(batch, spoils);
        Expect(net.Count, plan?.First ?? batch, "first", nameof(net));
        if (second.Count > 0)
        {
            Expect(second.Count, plan?.Second ?? 0, "second", nameof(second));
        }

        var (t1, t2) = (TolerableError.First(label), TolerableError.Second(label));
        var (mean, deviation) = net.MeanStandardDeviation();
        var (inFirst, inBoth) = (net.Count(w => w < t1), net.Concat(second).Count(w => w < t1));
        var least = plan is null ? label.Grams : label.Grams - (plan.Factor * deviation);
        return new(plan, mean, deviation, least, t1, t2, inBoth, net.Concat(second).Count(w => w < t2), Verdict(plan, inFirst, inBoth, second.Count > 0, batch));
    }

    /// <summary>The plan of a batch; null where it is weighed whole.</summary>
    /// <param name="batch">Packages in the batch.</param>
    /// <param name="spoils">Whether testing spoils the package.</param>
    public static BatchPlan? PlanOf(int batch, bool spoils = false) => batch < BatchPlan.LeastBatch ? null : spoils ? BatchPlan.Destructive : BatchPlan.For(batch);

    private static CountVerdict Verdict(BatchPlan? plan, int inFirst, int inBoth, bool hasSecond, int batch) => plan is null ? (inFirst <= WholeShare * batch ? CountVerdict.Accepted : CountVerdict.Rejected)
        : inFirst <= plan.FirstAccept ? CountVerdict.Accepted
        : inFirst >= plan.FirstReject ? CountVerdict.Rejected
        : !hasSecond ? CountVerdict.SecondSample
        : inBoth <= plan.Accept ? CountVerdict.Accepted : CountVerdict.Rejected;

    private static void Expect(int got, int wanted, string which, string name)
    {
        if (got != wanted)
        {
            throw new ArgumentException($"The {which} sample of this batch has {wanted} packages; got {got} weights.", name);
        }
    }
}
