using System.Globalization;
using Evengrist.Intake;
using Evengrist.Intake.Grading;
using Evengrist.Ledger;
using Evengrist.Tests.Architecture;

namespace Evengrist.Tests.Intake.Grading;

/// <summary>The worked case of docs/model/grades.md.</summary>
public sealed class GradesWrittenTests
{
    [Fact]
    public void Page_WorkedCase_ShowsWhatTheCodeSays()
    {
        var page = Repository.Text("docs/model/grades.md");
        var graded = Samples.Graded(new GradeSample
        {
            Composition = [new("HRS", 96.6m), new("HRW", 2.6m), new("Durum", 0.6m)],
            Findings = [new Finding(Property.TestWeight, 57.3m, "lb/bu"), new Finding(Property.Vitreous, 78m, "%"), new Finding(Property.InsectDamagedKernels, 2m, "/100 g"), new Finding(Property.GarlicBulblets, 3m, "/kg")],
            Weighings = new(1004.2m, 6.6m)
            {
                ThroughSieve = 3.85m, Sieved = 250.4m, Picked = [new(Property.Damaged, 0.34m, 15.1m), new(Property.HeatDamaged, 0.05m, 50.2m), new(Property.ForeignMaterial, 0.11m, 30.3m)],
            },
            Observed = [],
            TakeAsNone = true,
        });
        Assert.Contains("\n" + graded.Designation + "\n", page, StringComparison.Ordinal);
        foreach (var row in graded.Factors.Take(8))
        {
            var line = $"| {row.Factor.Words} | {Digits(row.Found!.Value, row.Found.Value.Scale > 4 ? 4 : row.Found.Value.Scale)} | {row.RecordedText} | {graded.Standard.GradeAt(row.Alone!.Value)} | {Step(row.Better)} | {Step(row.Worse)} |";
            Assert.Contains(line, page, StringComparison.Ordinal);
        }
    }

    private static string Step(GradeStep? step) => step is null ? "–" : Digits(step.By, 1);

    private static string Digits(decimal value, int decimals) => value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
