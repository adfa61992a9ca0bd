using System.Globalization;
using Evengrist.Ledger;

namespace Evengrist.Mix;

/// <summary>Finds every fault of what a mix is wanted for. Page: docs/model/mix.md.</summary>
public static class MixSpecCheck
{
    private const double Tiny = 1e-9;

    /// <summary>Every fault, each a sentence that says what to do; empty where there is none.</summary>
    public static IReadOnlyList<string> Faults(MixSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        return
        [
            .. spec.Bins.Count == 0 ? ["No bin is offered: offer at least one."] : Array.Empty<string>(),
            .. spec.Bins.GroupBy(b => b.Code, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1).Select(g => $"{g.Key} is offered {g.Count()} times: offer each bin once."),
            .. spec.Bins.SelectMany(OfBin),
            .. spec.Limits.SelectMany(l => OfLimit(l, spec)),
            .. spec.Limits.GroupBy(l => (l.What, l.On)).Where(g => g.Count() > 1).Select(g => $"{g.Key.What.Words()} of the {g.Key.On.ToString().ToLowerInvariant()} has {g.Count()} limits: give one with a least and a most."),
            .. spec.Relations.SelectMany(OfRelation),
            .. spec.Relations.GroupBy(r => r.What).Where(g => g.Count() > 1).Select(g => $"The flour's {g.Key.Words()} follows from the wheat's in {g.Count()} ways: give one."),
            .. spec.Classes.Where(c => !IsSpan(c.Least, c.Most)).Select(c => $"The share of {c.Class} runs from a least to a most, within 0 and 100 %."),
            .. OfGates(spec),
            .. spec.Habit is { } habit ? OfHabit(habit, spec) : [],
        ];
    }

    private static IEnumerable<string> OfBin(MixBin bin)
    {
        if (!double.IsFinite(bin.CostPerTonne) || bin.YearValuePerTonne is { } year && !double.IsFinite(year))
        {
            yield return $"The cost of {bin.Code} is no number.";
        }

        if (!(bin.MoisturePercent is >= 0 and <= 60))
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"The moisture of {bin.Code} lies from 0 to 60 %; got {bin.MoisturePercent}.");
        }

        if (!IsSpan(bin.LeastShare, bin.MostShare))
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"The share of {bin.Code} runs from a least to a most, within 0 and 100 %; got {100 * bin.LeastShare:0.##} to {100 * bin.MostShare:0.##} %.");
        }

        if (bin.LockedShare is { } locked && !(locked is >= 0 and <= 1))
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"The gate of {bin.Code} is locked at a share from 0 to 100 %; got {100 * locked:0.##} %.");
        }

        else if (bin.LockedShare is { } held && (held < bin.LeastShare - Tiny || held > bin.MostShare + Tiny))
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"The gate of {bin.Code} is locked at {100 * held:0.##} %, outside its own share of {100 * bin.LeastShare:0.##} to {100 * bin.MostShare:0.##} %.");
        }

        if (bin.Tonnes is { } tonnes && !(tonnes >= 0))
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"{bin.Code} can give 0 t or more; got {tonnes}.");
        }

        foreach (var fault in bin.Values.SelectMany(v => OfValue(bin, v.Key, v.Value)))
        {
            yield return fault;
        }
    }

    private static IEnumerable<string> OfValue(MixBin bin, Property what, MixValue value)
    {
        if (what == Property.None || !Enum.IsDefined(what))
        {
            yield return $"{bin.Code} has a value of {what}, which is no property.";
        }
        else if (!double.IsFinite(value.Value) || value.Value < 0 && what != Property.Hardness)
        {
            yield return $"{what.Words()} of {bin.Code} is no number of 0 or more.";
        }
        else if (what == Property.FallingNumber && value.Value <= 50)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"The falling number of {bin.Code} is {value.Value} s: at 50 s or below it cannot be blended, since the liquefaction number has no end there. Leave the bin out.");
        }
        else if (BlendRules.Of(what) is { Scale: BlendScale.Reciprocal } && value.Value <= 0)
        {
            yield return $"{what.Words()} of {bin.Code} has to be above 0.";
        }

        if (what.NeedsBasis() && !(value.Basis.IsStated))
        {
            yield return $"{what.Words()} of {bin.Code} needs a moisture basis: dry, 12mb, 14mb or another.";
        }
        else if (!what.NeedsBasis() && value.Basis.IsStated)
        {
            yield return $"{what.Words()} of {bin.Code} has no moisture basis: leave {value.Basis} out.";
        }

        if (!(value.OwnUncertainty >= 0 && double.IsFinite(value.OwnUncertainty) && value.InstrumentUncertainty >= 0 && double.IsFinite(value.InstrumentUncertainty)))
        {
            yield return $"The uncertainty of {what.Words()} of {bin.Code} is a number of 0 or more.";
        }
    }

    private static IEnumerable<string> OfLimit(MixLimit limit, MixSpec spec)
    {
        var (words, of) = (limit.What.Words(), limit.On == LimitOn.Wheat ? "wheat" : "flour");
        if (limit.What == Property.None || !Enum.IsDefined(limit.What))
        {
            yield return $"A limit is on {limit.What}, which is no property.";
            yield break;
        }

        if (BlendRules.Of(limit.What) is null)
        {
            yield return $"There is no rule for how {words} blends: it cannot have a limit in a mix. Possible: {string.Join(", ", BlendRules.All.Select(r => r.What.Words()))}.";
            yield break;
        }

        if (limit.Least is null && limit.Most is null)
        {
            yield return $"The limit of {words} has neither a least nor a most: give one or leave it out.";
        }

        foreach (var end in limit.Ends.Where(e => !double.IsFinite(e.Value) || e.Value < 0 && limit.What != Property.Hardness || limit.What == Property.FallingNumber && e.Value <= 50 || BlendRules.Of(limit.What)!.Scale == BlendScale.Reciprocal && e.Value <= 0))
        {
            yield return $"The {(end.IsLeast ? "least" : "most")} of {words} cannot be {end.Value.ToString(CultureInfo.InvariantCulture)}.";
        }

        if (limit.Least > limit.Most)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"The limits of {words} cross: the least is {limit.Least}, the most {limit.Most}.");
        }

        if (limit.Confidence is { } sure && !(sure is >= 0.5 and < 1))
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"The confidence of {words} lies from 50 % up to, not including, 100 %; got {100 * sure:0.##} %. Below 50 % a limit would be wished to fail.");
        }

        if (limit.What.NeedsBasis() != limit.Basis.IsStated)
        {
            yield return limit.Basis.IsStated ? $"The limit of {words} has no moisture basis: leave {limit.Basis} out." : $"The limit of {words} needs a moisture basis: dry, 12mb, 14mb or another.";
        }

        if (limit.On == LimitOn.Flour)
        {
            if (spec.Relations.All(r => r.What != limit.What))
            {
                yield return $"The limit of {words} is on the flour, but nothing says how the flour's {words} follows from the wheat's: give the mill's relation.";
            }
            else if (spec.Relations.First(r => r.What == limit.What) is { Slope: not 0 } relation && limit.What == Property.FallingNumber)
            {
                foreach (var end in limit.Ends.Where(e => relation.WheatFor(e.Value) <= 50))
                {
                    yield return string.Create(CultureInfo.InvariantCulture, $"A flour at {end.Value} s would need wheat of {relation.WheatFor(end.Value):0} s: that cannot be.");
                }
            }
        }

        foreach (var bin in spec.Bins.Where(b => !b.Values.ContainsKey(limit.What)))
        {
            yield return $"{bin.Code} has no {words}, on which the {of} has a limit: test it, or leave the bin out.";
        }
    }

    /// <summary>What is wrong with a relation of flour to wheat, each a sentence.</summary>
    internal static IEnumerable<string> OfRelation(FlourRelation relation)
    {
        if (relation.Slope == 0 || !double.IsFinite(relation.Slope) || !double.IsFinite(relation.Intercept) || !(relation.Uncertainty >= 0 && double.IsFinite(relation.Uncertainty)))
        {
            yield return $"How the flour's {relation.What.Words()} follows from the wheat's is a line with a slope other than 0 and an uncertainty of 0 or more.";
        }

        if (relation.What.NeedsBasis() && !(relation.WheatBasis.IsStated && relation.FlourBasis.IsStated))
        {
            yield return $"How the flour's {relation.What.Words()} follows from the wheat's needs a moisture basis for both.";
        }
    }

    private static IEnumerable<string> OfGates(MixSpec spec)
    {
        var gates = spec.Gates;
        (string What, double? Value)[] above =
        [
            ("The step of the gates in per cent", gates.StepPercent), ("The step of the gates in t/h", gates.StepTonnesPerHour), ("The rate", spec.RateTonnesPerHour), ("The hours of the mix", spec.Hours),
            ("The most a feeder delivers", gates.MostTonnesPerHour),
        ];
        foreach (var (what, value) in above.Where(a => a.Value is { } v && !(v > 0 && double.IsFinite(v))))
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"{what} has to be above 0; got {value}.");
        }

        if (gates.MostGates is < 1)
        {
            yield return "At least one gate has to be open.";
        }

        if (gates.LeastOpenShare is { } least && !(least is >= 0 and <= 1) || gates.LeastTonnesPerHour is { } tph && !(tph >= 0) || gates.LeastTonnesPerHour > gates.MostTonnesPerHour)
        {
            yield return "The least of an open gate is 0 or more and not above its most.";
        }

        if (gates.StepPercent is not null && gates.StepTonnesPerHour is not null)
        {
            yield return "Gates go by per cent or by t/h, not by both: give one step.";
        }

        if (spec.RateTonnesPerHour is null && (gates.StepTonnesPerHour is not null || gates.LeastTonnesPerHour is not null || gates.MostTonnesPerHour is not null || spec.Hours is not null))
        {
            yield return "Limits in t/h and hours need the rate of the mix in t/h.";
        }

        if (spec.StepShare is { } step && step > 0 && step <= 1 && Math.Abs((1 / step) - Math.Round(1 / step)) > 1e-6)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"The whole mix is {1 / step:0.###} steps of the gates: choose a step that goes into it without a rest.");
        }
        else if (spec.StepShare > 1)
        {
            yield return "One step of the gates is more than the whole mix.";
        }
        else if (spec.StepShare is { } size)
        {
            foreach (var bin in spec.Bins.Where(b => b.LockedShare is { } l && Math.Abs((l / size) - Math.Round(l / size)) > 1e-6))
            {
                yield return string.Create(CultureInfo.InvariantCulture, $"The gate of {bin.Code} is locked at {100 * bin.LockedShare:0.##} %, which is no whole number of steps of {100 * size:0.###} %.");
            }
        }
    }

    private static IEnumerable<string> OfHabit(IReadOnlyDictionary<string, double> habit, MixSpec spec)
    {
        foreach (var code in habit.Keys.Where(c => spec.Bins.All(b => b.Code != c)))
        {
            yield return $"The old habit draws from {code}, which is not offered.";
        }

        if (habit.Values.Any(s => !(s >= 0)) || Math.Abs(habit.Values.Sum() - 1) > 1e-6)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"The shares of the old habit are 0 or more and sum to 100 %; got {100 * habit.Values.Sum():0.##} %.");
        }
    }

    private static bool IsSpan(double least, double most) => least >= -Tiny && most <= 1 + Tiny && least <= most;
}
