using Evengrist.Ledger;

namespace Evengrist.Intake.Grading;

/// <summary>What cannot be in a sample.</summary>
internal static class SampleCheck
{
    private static readonly (Property Part, Property Whole)[] Parts =
    [
        (Property.HeatDamaged, Property.Damaged), (Property.ContrastingClasses, Property.OtherClasses), (Property.SeverelySprouted, Property.Sprouted),
    ];

    // Each is a share of the same grain, and no kernel is counted in two of them.
    private static readonly Property[][] Apart =
    [
        [Property.Damaged, Property.ForeignMaterial], [Property.OtherClasses, Property.ForeignMaterial], [Property.WhiteClub, Property.OtherSoftWhite],
        [Property.OtherGrains, Property.OrganicExtraneous, Property.InorganicExtraneous, Property.Filth],
    ];

    public static IEnumerable<SampleFault> Of(GradeStandard standard, GradeSample sample)
    {
        ArgumentNullException.ThrowIfNull(standard);
        foreach (var fault in ClassCheck.Of(standard, sample))
        {
            yield return fault;
        }

        var weighings = sample.Weighings?.Faults().ToArray() ?? [];
        foreach (var fault in weighings)
        {
            yield return new("weighings", fault);
        }

        var wrong = sample.Findings.Where(f => f.Fault is not null).ToArray();
        foreach (var finding in wrong)
        {
            yield return new("findings", finding.Fault!);
        }

        if (weighings.Length > 0 || wrong.Length > 0)
        {
            yield break;
        }

        var found = sample.Findings.Select(f => (f.What, f.Value)).Concat((sample.Weighings?.Findings() ?? []).Select(w => (w.What, Value: w.Percent))).ToArray();
        foreach (var twice in found.GroupBy(f => f.What).Where(g => g.Count() > 1))
        {
            yield return new("findings", $"{Capital(twice.Key)} is given twice: leave one of the two.");
        }

        foreach (var fault in Sizes(found.GroupBy(f => f.What).ToDictionary(g => g.Key, g => g.First().Value)))
        {
            yield return new("findings", fault);
        }
    }

    private static IEnumerable<string> Sizes(Dictionary<Property, decimal> found)
    {
        foreach (var (part, whole) in Parts)
        {
            if (found.TryGetValue(part, out var p) && found.TryGetValue(whole, out var w) && p > w)
            {
                yield return FormattableString.Invariant($"{Capital(part)} of {Plain(p)} % cannot be above {whole.Words()} of {Plain(w)} %, of which it is a part.");
            }
        }

        foreach (var apart in Apart)
        {
            var there = apart.Where(found.ContainsKey).ToArray();
            var sum = there.Sum(p => found[p]);
            if (there.Length > 1 && sum > 100m)
            {
                yield return FormattableString.Invariant($"{string.Join(", ", there.Select(p => FormattableString.Invariant($"{p.Words()} {Plain(found[p])} %")))} make {Plain(sum)} % together: more than the whole sample.");
            }
        }
    }

    private static string Capital(Property what) => char.ToUpperInvariant(what.Words()[0]) + what.Words()[1..];

    private static decimal Plain(decimal value) => Math.Round(value, 4) / 1.0000m;
}
