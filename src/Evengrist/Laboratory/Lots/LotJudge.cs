using Evengrist.Laboratory.Conformity;
using Evengrist.Laboratory.Methods;
using Evengrist.Laboratory.Specifications;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Laboratory.Lots;

/// <summary>Holds a lot's readings against a specification, line by line. Model: docs/model/lots.md.</summary>
/// <param name="Specification">The specification.</param>
/// <param name="Policy">The chance inside from which on release is advised.</param>
/// <param name="UncertaintyOf">One standard uncertainty of a reading that states none, in its unit; null where it is not known.</param>
public sealed record LotJudge(Specification Specification, double Policy, Func<Reading, double?> UncertaintyOf)
{
    /// <summary>What is known of the instruments.</summary>
    public InstrumentRecord Instruments { get; init; } = InstrumentRecord.None;

    /// <summary>A judge who knows no more of a reading than it states.</summary>
    public static LotJudge Of(Specification specification, double policy) => new(specification, policy, r => (double?)r.StandardUncertainty);

    /// <summary>Every line judged.</summary>
    /// <param name="readings">The readings that speak for the lot.</param>
    /// <param name="off">How much too high a reading is known to be, with its standard uncertainty, in its own unit and basis; none where null.</param>
    public IReadOnlyList<LotResult> Results(IReadOnlyList<Reading> readings, Func<Reading, (double Bias, double Uncertainty)?>? off = null) =>
        [.. Specification.Items.Select(i => Of(i, [.. readings.Where(r => r.What == i.What)], off ?? (_ => null)))];

    /// <summary>The result of a property on a basis over all lines, for the rules of law; null where none was read.</summary>
    public static decimal? Value(IReadOnlyList<LotResult> results, Property what, Basis basis) =>
        results.FirstOrDefault(r => r.Item.What == what && r.Reported is not null) is { Reported: { } value, Item: var item }
            ? basis.IsStated && item.Basis.IsStated ? item.Basis.Restated(value, basis) : value : null;

    private LotResult Of(SpecificationItem item, IReadOnlyList<Reading> readings, Func<Reading, (double Bias, double Uncertainty)?> off)
    {
        var groups = readings.Where(r => r.Unit == item.Unit && (item.Method.Length == 0 || r.Method.Equals(item.Method, StringComparison.OrdinalIgnoreCase)))
            .GroupBy(r => (Method: r.Method.ToUpperInvariant(), Instrument: r.Instrument.ToUpperInvariant())).Select(g => g.ToArray()).ToArray();
        if (groups.Length == 0)
        {
            return new LotResult(item, [], [], readings.Count, null, readings.Count == 0
                ? $"No reading of {item.What.Words()} speaks for this lot: take a sample and record it on one of its packages."
                : $"{item.What.Words()} was read, but not in {item.Unit}{(item.Method.Length > 0 ? $" by {item.Method}" : "")}, as the specification asks.");
        }

        var judged = groups.Select(g => Of(item, g, readings.Count - g.Length, off)).ToArray();
        // An instrument in check goes before one that is surer and was out of it.
        return judged.Where(j => j.Outcome is not null).OrderBy(j => j.OutOfCheck.Length > 0).ThenBy(j => j.Outcome!.Uncertainty).FirstOrDefault() ?? judged.OrderByDescending(j => j.Readings.Count).First();
    }

    private LotResult Of(SpecificationItem item, Reading[] group, int others, Func<Reading, (double Bias, double Uncertainty)?> off)
    {
        var settings = group.Select(Instruments.ToApply).ToArray();
        decimal Onto(Reading reading) => item.Basis.IsStated ? reading.Basis.Restated(1m, item.Basis) : 1m;
        decimal Put(Reading reading, InstrumentCalibration? setting)
        {
            var value = reading.Value - (decimal)(off(reading)?.Bias ?? 0);
            return setting?.Adjust(value) ?? value;
        }

        var found = new LotResult(item, group, [.. group.Zip(settings, (r, s) => Put(r, s) * Onto(r))], others, null, "")
        {
            OutOfCheck = group.Select(Instruments.Against).FirstOrDefault(w => w is not null) ?? "", AsRead = settings.All(s => s is null) ? [] : [.. group.Select(r => r.Value * Onto(r))],
        };
        double?[] own = [.. group.Zip(settings, (r, s) => UncertaintyOf(r) is { } u ? u * (double)(Onto(r) * (s?.Slope ?? 1)) : (double?)null)];
        if (own.Any(u => u is null))
        {
            return found with { WhyNot = $"The uncertainty of {group[0].Method} is not known: no chance is stated. Give it with the readings, or the method its reproducibility." };
        }

        // Readings put right share what is not known of the correction, beside what they shared before.
        var correction = group.Max(r => (off(r)?.Uncertainty ?? 0) * (double)Onto(r)) * group.Count(r => off(r) is not null) / group.Length;
        var one = Math.Sqrt(own.Average(u => u!.Value * u.Value));
        var shared = double.Hypot(Math.Min(item.BiasPart, one), correction);
        var samples = group.Select(r => (r.On, r.At)).Distinct().Count();
        var spread = new ResultSpread(Math.Max(double.Hypot(one, correction), shared)) { Bias = shared, Lot = item.LotSpread };
        var spec = new ConformitySpec([.. found.Values.Select(v => (double)v)], spread, item.Tolerance)
        {
            Samples = samples, Rule = item.Rule, Needed = item.Needed, IsGuarded = item.IsGuarded, BuyersRisk = item.BuyersRisk, Guard = (double?)item.Guard, Customer = item.Customer, Policy = Policy,
        };
        return spec.Faults() is { Count: > 0 } faults ? found with { WhyNot = string.Join(" ", faults) } : found with { Outcome = ConformityModel.Of(spec) };
    }
}
