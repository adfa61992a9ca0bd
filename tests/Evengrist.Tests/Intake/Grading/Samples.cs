using Evengrist.Intake;
using Evengrist.Intake.Grading;
using Evengrist.Ledger;

namespace Evengrist.Tests.Intake.Grading;

/// <summary>Samples that several tests share.</summary>
internal static class Samples
{
    public static readonly GradeStandard Us = Standards.Find("us-wheat", "2015", out _)!;

    /// <summary>A sound sample of hard red winter wheat: No. 1 by every factor.</summary>
    public static readonly GradeSample Sound = Of("HRW", (Property.TestWeight, 61m), (Property.HeatDamaged, 0m), (Property.Damaged, 1.0m), (Property.ForeignMaterial, 0.2m), (Property.ShrunkenAndBroken, 1.0m),
        (Property.ContrastingClasses, 0m), (Property.OtherClasses, 0m));

    public static GradeSample Of(string wheat, params (Property What, decimal Value)[] found) => new()
    {
        Class = wheat, TakeAsNone = true, Findings = [.. found.Select(f => new Finding(f.What, f.Value, f.What == Property.TestWeight ? "lb/bu" : Readings.UnitsOf(f.What)[0]))],
    };

    public static GradeSample Of(GradeVector vector) => Of(vector.Class, (Property.TestWeight, vector.TestWeight), (Property.HeatDamaged, vector.Percents[0]), (Property.Damaged, vector.Percents[1]),
        (Property.ForeignMaterial, vector.Percents[2]), (Property.ShrunkenAndBroken, vector.Percents[3]), (Property.ContrastingClasses, 0m), (Property.OtherClasses, vector.OtherClasses),
        (Property.InsectDamagedKernels, vector.InsectDamaged), (Property.Glass, vector.Glass)) with
    {
        Leading = vector.Leading,
        Observed = vector.Observed.Length > 0 ? [Enum.Parse<GradeObservation>(vector.Observed, ignoreCase: true)] : [],
        Sums = vector.Unrounded ? SumPolicy.UnroundedSum : SumPolicy.RecordedParts,
    };

    /// <summary>The sample with one finding put in or changed.</summary>
    public static GradeSample With(this GradeSample sample, Property what, decimal value, string? unit = null) => sample with
    {
        Findings = [.. sample.Findings.Where(f => f.What != what), new Finding(what, value, unit ?? (what == Property.TestWeight ? "lb/bu" : Readings.UnitsOf(what)[0]))],
    };

    public static GradeSample Without(this GradeSample sample, Property what) => sample with { Findings = [.. sample.Findings.Where(f => f.What != what)] };

    public static Graded Graded(GradeSample sample, GradeStandard? standard = null) => Assert.IsType<Graded>(GradeModel.Grade(standard ?? Us, sample));

    public static NotGraded NotGraded(GradeSample sample, GradeStandard? standard = null) => Assert.IsType<NotGraded>(GradeModel.Grade(standard ?? Us, sample));

    public static FactorResult Row(GradeOutcome outcome, string words) => outcome.Factors.Single(f => f.Factor.Words == words);
}
