using Evengrist.Ledger;

namespace Evengrist.Intake.Grading;

/// <summary>Grades a sample by a standard: the worst single factor, special grades beside it.</summary>
/// <remarks>Values are recorded half up at the factor's decimals and only then compared. Nothing missing is guessed. Model: docs/model/grades.md.</remarks>
public static class GradeModel
{
    /// <summary>The grade of a sample.</summary>
    /// <param name="standard">The standard.</param>
    /// <param name="sample">What was found.</param>
    /// <exception cref="ArgumentException">The sample has <see cref="GradeSample.Faults"/>.</exception>
    public static GradeOutcome Grade(GradeStandard standard, GradeSample sample)
    {
        ArgumentNullException.ThrowIfNull(standard);
        ArgumentNullException.ThrowIfNull(sample);
        if (sample.Faults(standard) is [var fault, ..])
        {
            throw new ArgumentException(fault.Sentence, nameof(sample));
        }

        var values = new SampleValues(standard, sample);
        var wheat = ClassModel.Of(standard, sample, values);
        var all = standard.Factors.Where(f => f.HasLimit && f.IsFor(wheat.Wheat, wheat.Subclass, wheat.IsMixed))
            .Select(f => FactorModel.Of(standard, f, values, sample.Sums, wheat.Wheat.IsDurum)).ToArray();
        var rows = all.Where(r => r.State != FoundState.Missing || !r.Factor.WhereRead).ToArray();
        var rejected = Found(standard.Rejections, values);
        var known = rows.Where(r => r.Alone is not null).Select(r => r.Alone!.Value).ToArray();
        var worst = rejected.Count > 0 ? standard.Grades.Count : known.Length > 0 ? known.Max() : 0;
        var special = Found(standard.Special, values);
        var factors = rows.Select(r => r with { Decides = worst > 0 && r.Alone == worst }).ToArray();
        List<string> missing = worst == standard.Grades.Count ? [] : MissingOf(standard, sample, values, wheat, factors);
        var reasons = ReasonsOf(standard, factors, missing, worst);
        var assumed = AssumedOf(standard, sample, values);
        string[] open = [.. OpenSpecial(standard, values, wheat), .. all.Except(rows).Select(r => $"{r.Factor.Words}: not read, so its limits were not applied")];
        var beside = sample.Findings.Where(f => f.What is Property.Moisture or Property.Protein or Property.Dockage && standard.Factors.All(r => r.What != f.What)).ToArray();
        return reasons.Count > 0
            ? new NotGraded
            {
                Standard = standard, Class = wheat, Factors = factors, Special = special, Rejected = rejected, Assumed = assumed, NotLookedFor = open, Beside = beside,
                Missing = missing, Reasons = reasons, AtBest = known.Length > 0 && worst < standard.Grades.Count ? standard.GradeAt(worst) : null,
            }
            : new Graded
            {
                Standard = standard, Class = wheat, Factors = factors, Special = special, Rejected = rejected, Assumed = assumed, NotLookedFor = open, Beside = beside,
                Place = worst, Designation = Designation.Of(standard, standard.GradeAt(worst), wheat, special, values),
                Deciding = [.. rejected.Select(r => r.Name), .. factors.Where(f => f.Decides).Select(f => f.Factor.Words)],
            };
    }

    private static List<SpecialFinding> Found(IReadOnlyList<GradeTrigger> triggers, SampleValues values)
    {
        var found = new List<SpecialFinding>();
        var groups = new HashSet<string>();
        foreach (var trigger in triggers)
        {
            if (trigger.Because(values) is { } because && (trigger.Group.Length == 0 || groups.Add(trigger.Group)))
            {
                found.Add(new(trigger.Name, because, trigger.Source));
            }
        }

        return found;
    }

    private static List<string> MissingOf(GradeStandard standard, GradeSample sample, SampleValues values, ClassFinding wheat, IReadOnlyList<FactorResult> factors)
    {
        var missing = factors.SelectMany(f => f.Missing).Distinct().Select(p => p.Words()).ToList();

        // Only where the limits hang on the subclass does the grade need it.
        if (wheat is { Subclass.Length: 0, IsMixed: false } && standard.Factors.Any(f => f.Only.Concat(f.Except).Any(n => wheat.Wheat.Subclasses.Any(s => s.Name == n && s.Name != wheat.Wheat.Name))))
        {
            missing.AddRange(wheat.Missing.Select(m => $"{m} (the limits hang on the subclass)"));
        }

        var unlooked = standard.Rejections.Where(t => t.IsOpen(values)).Select(t => t.Name).ToArray();
        if (sample.Observed is null && unlooked.Length > 0)
        {
            missing.Add($"whether any of this was noticed: {string.Join(", ", unlooked)}");
        }

        return missing;
    }

    private static List<string> ReasonsOf(GradeStandard standard, IReadOnlyList<FactorResult> factors, List<string> missing, int worst)
    {
        var reasons = new List<string>();
        if (missing.Count > 0)
        {
            reasons.Add($"Missing for the grade: {string.Join(", ", missing)}. Read it, or say that what was not looked for is taken as none.");
        }

        reasons.AddRange(factors.Where(f => f is { State: not FoundState.Missing, Alone: null })
            .Select(f => $"{f.Factor.Words} of {f.RecordedText} {f.Factor.Unit} goes beyond the limits that were read; the next one is not read here and is not guessed. Ask the standard itself."));
        if (worst == standard.Grades.Count && standard.Below is null)
        {
            reasons.Add($"It meets none of the grades that were read, down to {standard.Grades[^1]}; what lies below is not read here. Ask the standard itself.");
        }

        return reasons;
    }

    private static IReadOnlyList<string> AssumedOf(GradeStandard standard, GradeSample sample, SampleValues values) => !sample.TakeAsNone ? []
        : [.. standard.Properties.Where(p => standard.LookedFor.Contains(p) && values.Find(p, Readings.UnitsOf(p)[0], default, durum: false).State == FoundState.Assumed).Select(p => p.Words()),
           .. sample.Observed is null ? standard.Observations.Select(o => o.Words()) : []];

    private static IReadOnlyList<string> OpenSpecial(GradeStandard standard, SampleValues values, ClassFinding wheat) =>
        [.. standard.Special.Where(t => t.IsOpen(values)).Select(t => $"{t.Name}: {t.Says}"), .. wheat.Missing.Count > 0 ? [$"subclass: {string.Join(", ", wheat.Missing)}"] : Array.Empty<string>()];
}
