using Evengrist.Ledger;

namespace Evengrist.Intake.Grading;

/// <summary>What cannot be about the class of a sample.</summary>
internal static class ClassCheck
{
    private const decimal LeastSorted = 90m;

    public static IEnumerable<SampleFault> Of(GradeStandard standard, GradeSample sample) =>
        sample.Composition.Count > 0 ? Sorted(standard, sample) : Said(standard, sample);

    private static IEnumerable<SampleFault> Said(GradeStandard standard, GradeSample sample)
    {
        var mixed = standard.HasMixed && ClassModel.IsCalledMixed(sample.Class);
        if (sample.Class.Length == 0 && standard.Classes.Count == 1)
        {
            yield break;
        }

        if (!mixed && standard.FindClass(sample.Class) is null)
        {
            yield return new("class", sample.Class.Length == 0 ? $"Say the class: {Names(standard)}." : $"{standard.Title} has no class \"{sample.Class}\". Write one of {Names(standard)}.");
        }

        if (mixed && standard.FindClass(sample.Leading) is null)
        {
            yield return new("leading", sample.Leading.Length == 0
                ? "Mixed wheat takes the limits of the class that predominates: say which leads, or give the per cent of each class."
                : $"{standard.Title} has no class \"{sample.Leading}\" that could lead. Write one of {string.Join(", ", standard.Classes.Select(c => c.Short))}.");
        }

        if (!mixed && sample.Leading.Length > 0)
        {
            yield return new("leading", "Only mixed wheat has a leading class: leave it out, or write Mixed as the class.");
        }

        if (standard.HasMixed && !mixed && sample.Findings.FirstOrDefault(f => f.What == Property.OtherClasses) is { Value: > 50m } others)
        {
            yield return new("findings", FormattableString.Invariant($"Other classes of {others.Value} % leave less than half for {sample.Class}: it may not predominate. Give the per cent of each class."));
        }
    }

    private static IEnumerable<SampleFault> Sorted(GradeStandard standard, GradeSample sample)
    {
        var unknown = sample.Composition.Where(c => standard.Classes.All(k => !k.IsCalled(c.Class.Trim()))).ToArray();
        foreach (var share in unknown)
        {
            yield return new("classes", $"{standard.Title} has no class \"{share.Class}\". Write one of {string.Join(", ", standard.Classes.Select(c => c.Short))}.");
        }

        if (unknown.Length > 0)
        {
            yield break;
        }

        foreach (var share in sample.Composition.Where(c => c.Percent is < 0m or > 100m))
        {
            yield return new("classes", FormattableString.Invariant($"{share.Percent} % of {share.Class} cannot be: it lies from 0 to 100 %."));
        }

        if (sample.Composition.GroupBy(c => standard.FindClass(c.Class)!.Value.Class.Name).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            yield return new("classes", $"{twice.Key} is given twice: leave one of the two.");
        }

        var sum = sample.Composition.Sum(c => c.Percent);
        if (sum is < LeastSorted or > 100m)
        {
            yield return new("classes", FormattableString.Invariant($"The classes make {sum} % together: all of them make from {LeastSorted} to 100 %, the rest being foreign material."));
        }

        var largest = sample.Composition.Max(c => c.Percent);
        if (sample.Composition.Count(c => c.Percent == largest) > 1)
        {
            yield return new("classes", FormattableString.Invariant($"Two classes make {largest} % each: the standard goes by the one that predominates. Sort a larger portion."));
        }

        if (sample.Class.Length > 0 || sample.Leading.Length > 0)
        {
            yield return new("class", "The class follows from the per cent of each class: leave class and leading out.");
        }

        if (sample.Findings.Any(f => f.What is Property.OtherClasses or Property.ContrastingClasses))
        {
            yield return new("findings", "Other and contrasting classes follow from the per cent of each class: leave them out.");
        }
    }

    private static string Names(GradeStandard standard) => string.Join(", ", standard.Classes.Select(c => c.Short)
        .Concat(standard.Classes.SelectMany(c => c.Subclasses).Select(s => s.Name)).Concat(standard.HasMixed ? [ClassModel.Mixed] : Array.Empty<string>()).Distinct());
}
