using Evengrist.Packing.NetContent;
using Evengrist.Plant.Cases;
using MathNet.Numerics.Statistics;

namespace Evengrist.Plant.Answers;

/// <summary>What net weights say of a lot, and the fill that would keep the rules; weights in the unit of the case.</summary>
/// <param name="Unit">Of all weights here.</param>
/// <param name="American">By the rules of the United States; null where they were not asked or nothing was weighed.</param>
/// <param name="European">By those of the European Union.</param>
/// <param name="Fill">What to aim at; null where nothing is known of the spread.</param>
/// <param name="Remarks">What else has to be known.</param>
public sealed record NetContentAnswer(string Unit, PackageFinding? American, BatchFinding? European, FillAnswer? Fill, IReadOnlyList<string> Remarks)
{
    /// <summary>Answers a case, or says why there is no answer.</summary>
    public static Reply<NetContentAnswer> To(NetContentCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        var (label, net, unit) = (posed.Declared, posed.Net(posed.Weights), posed.ToGrams);
        var spread = posed.Fill?.Deviation is { } known ? new FillSpread(known * unit) : net.Count > 1 ? new FillSpread(net.StandardDeviation(), (posed.Tare?.Deviation ?? 0) * unit) : null;
        if (spread?.Fault is { } fault && net.Count > 0 && posed.Fill is not null)
        {
            return new(null, [fault]);
        }

        var american = posed.Rules == NetRules.US && net.Count > 0 ? In(PackageCheck.Of(label, posed.Lot, net), unit) : null;
        var european = posed.Rules == NetRules.EU && net.Count > 0 ? In(BatchCheck.Of(label, posed.Lot, net, posed.Net(posed.Second)), unit) : null;
        var fill = spread is { Fault: null } ? FillAnswer.Of(posed, label, spread.Net) : null;
        return new(new(posed.Unit, american, european, fill, [.. Told(posed, american, european)]), []);
    }

    private static PackageFinding In(PackageFinding f, double unit) =>
        f with { MeanError = f.MeanError / unit, Deviation = f.Deviation / unit, ErrorLimit = f.ErrorLimit / unit, Variation = f.Variation / unit };

    private static BatchFinding In(BatchFinding f, double unit) =>
        f with { Mean = f.Mean / unit, Deviation = f.Deviation / unit, LeastMean = f.LeastMean / unit, First = f.First / unit, Second = f.Second / unit };

    private static IEnumerable<string> Told(NetContentCase posed, PackageFinding? american, BatchFinding? european)
    {
        yield return posed.Rules == NetRules.US ? "Sampling plans and allowed variations of NIST Handbook 133 are from memory: check them against the edition in force before use."
            : "Annexes of Directive 76/211/EEC; tolerable errors above 1 kg and their rounding are from memory: check them against the law in force before use.";
        yield return "A check by these rules is the mill's own: the weights and measures authority decides what is lawful, and a named person decides what is packed.";
        if (american?.Average == AverageVerdict.Grey)
        {
            yield return "The average is short by no more than flour may have lost by drying (3 % of the label, from memory): find out whether it has before anything is done.";
        }

        if (european?.Count == CountVerdict.SecondSample)
        {
            yield return $"The count says neither yes nor no: weigh a second sample of {european.Plan!.Second} packages.";
        }

        if (posed.Fill?.Drying is null)
        {
            yield return "Flour loses water after packing: the weight must be there when it is sold. Give moisture when packed and when sold to see what that asks.";
        }
    }
}

/// <summary>A fill to aim at, in the unit of the case.</summary>
/// <param name="Deviation">Standard deviation of net weights.</param>
/// <param name="ToAim">Mean net weight to aim at when packed.</param>
/// <param name="WhenSold">That must be there when sold.</param>
/// <param name="ByAverage">What the rule of the average asks for.</param>
/// <param name="ByEach">What the rules of each package ask for.</param>
/// <param name="Giveaway">Packed above the label, on average.</param>
/// <param name="GiveawayPercent">The same, per cent of the label.</param>
public sealed record FillAnswer(double Deviation, double ToAim, double WhenSold, double ByAverage, double ByEach, double Giveaway, double GiveawayPercent)
{
    internal static FillAnswer Of(NetContentCase posed, NetLabel label, double deviation)
    {
        var (drift, unit) = ((posed.Fill?.Drift ?? 0) * posed.ToGrams, posed.ToGrams);
        var target = posed.Rules == NetRules.US ? TargetFill.InAmerica(label, deviation, posed.Lot, drift) : TargetFill.InEurope(label, deviation, drift);
        var packed = posed.Fill?.Drying?.ToPack(target.Grams) ?? target.Grams;
        return new(deviation / unit, packed / unit, target.Grams / unit, target.ByAverage / unit, target.ByEach / unit, (packed - label.Grams) / unit, 100 * (packed - label.Grams) / label.Grams);
    }
}
