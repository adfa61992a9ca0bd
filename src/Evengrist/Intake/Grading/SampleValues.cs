using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Intake.Grading;

/// <summary>The values of a sample as a standard asks for them: read, reckoned from weighings and shares of classes, or taken as none.</summary>
public sealed class SampleValues
{
    private readonly GradeStandard standard;
    private readonly GradeSample sample;
    private readonly Dictionary<Property, FoundValue> reckoned = [];

    /// <summary>The values of a sample before a standard.</summary>
    public SampleValues(GradeStandard standard, GradeSample sample)
    {
        (this.standard, this.sample) = (standard, sample);
        ArgumentNullException.ThrowIfNull(sample);
        foreach (var weighed in sample.Weighings?.Findings() ?? [])
        {
            Reckon(weighed.What, weighed.Percent, weighed.Formula, "by definition of the basis");
        }

        FromClasses();
    }

    /// <summary>Whether something was noticed; null where nobody looked and the case does not say to take it as nothing.</summary>
    public bool? Has(GradeObservation observed) => sample.Observed?.Contains(observed) ?? (sample.TakeAsNone ? false : null);

    /// <summary>A value in a unit, not rounded; null where it is missing.</summary>
    /// <param name="what">The property.</param>
    /// <param name="unit">One of its units.</param>
    /// <param name="basis">The moisture basis of a share of solids.</param>
    /// <param name="durum">Whether test weight goes by the equation of durum.</param>
    public decimal? Read(Property what, string unit, Basis basis, bool durum = false) => Find(what, unit, basis, durum) is { State: not FoundState.Missing } found ? found.Value : null;

    internal FoundValue Find(Property what, string unit, Basis basis, bool durum)
    {
        if (sample.Findings.FirstOrDefault(f => f.What == what) is { } finding)
        {
            return Convert(finding, unit, basis, durum);
        }

        if (reckoned.TryGetValue(what, out var known))
        {
            return known;
        }

        return sample.TakeAsNone && standard.LookedFor.Contains(what)
            ? new(0m, FoundState.Assumed, Figure.Reckoned(what.Words(), 0m, unit, 0, new Because("not looked for; taken as none, as the case says", [], "an assumption")))
            : FoundValue.Missing;
    }

    private static FoundValue Convert(Finding finding, string unit, Basis basis, bool durum)
    {
        var seen = finding.AsFigure();
        if (finding.What == Property.TestWeight && finding.Unit != unit)
        {
            var (read, asked) = (TestWeight.Read(finding.Value, finding.Unit, durum), TestWeightFormula.Of(TestWeight.ConventionOf(unit, durum)));
            var formula = finding.Unit == "kg/hL" ? $"backwards: {asked.Name}" : unit == "kg/hL" ? read.Formula.Name : $"{read.Formula.Name}; then backwards: {asked.Name}";
            var value = asked.FromKilogramsPerHectolitre(read.KilogramsPerHectolitre);
            return new(value, FoundState.Reckoned, Figure.Reckoned(finding.What.Words(), value, Label(unit), 2, new Because(formula, [seen], asked.Source)));
        }

        if (finding.What.NeedsBasis() && finding.Basis != basis && basis.IsStated)
        {
            var value = finding.Basis.Restated(finding.Value, basis);
            return new(value, FoundState.Reckoned, Figure.Reckoned(finding.What.Words(), value, unit, 2, new Because($"carried from {finding.Basis} to {basis}, dry matter kept", [seen], "by definition")) with { Basis = basis });
        }

        // The display choice of units must not swap a number that stands beside a limit of the standard.
        return new(finding.Value, FoundState.Seen, finding.What == Property.TestWeight ? Figure.Seen(finding.What.Words(), finding.Value, Label(unit)) : seen);
    }

    private static string Label(string unit) => unit switch { "lb/bu" => "lb per Winchester bu", "kg/hL" => "kg in 1 hL", _ => unit };

    private void Reckon(Property what, decimal value, string formula, string source, params IReadOnlyList<Figure> inputs) =>
        reckoned[what] = new(value, FoundState.Reckoned, Figure.Reckoned(what.Words(), value, "%", 3, new Because(formula, inputs, source)));

    private void FromClasses()
    {
        if (sample.Composition.Count > 0 && ClassModel.Leading(standard, sample) is { } leading)
        {
            var others = sample.Composition.Select(c => (Class: standard.FindClass(c.Class)!.Value.Class, c.Percent)).Where(c => c.Class != leading).ToArray();
            var figures = others.Select(o => Figure.Seen(o.Class.Name, o.Percent, "%")).ToArray();
            Reckon(Property.OtherClasses, others.Sum(o => o.Percent), $"sum of the classes other than {leading.Name}", "7 CFR 810.2202, 2015 edition", figures);
            Reckon(Property.ContrastingClasses, others.Where(o => leading.Contrasting.Contains(o.Class.Name)).Sum(o => o.Percent),
                $"sum of the classes that contrast in {leading.Name}: {string.Join(", ", leading.Contrasting)}", "7 CFR 810.2202, 2015 edition", figures);
        }

        // Nothing of the whole is nothing of the part.
        foreach (var part in standard.Factors.Where(f => f.PartOf != Property.None && sample.Findings.All(s => s.What != f.What)))
        {
            if (Find(part.PartOf, part.Unit, default, durum: false) is { State: FoundState.Seen or FoundState.Reckoned, Value: 0m, Figure: { } whole } && !reckoned.ContainsKey(part.What))
            {
                Reckon(part.What, 0m, $"a part of {part.PartOf.Words()}, of which there is none", "by definition", whole);
            }
        }
    }
}
