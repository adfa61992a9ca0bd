using Evengrist.Intake.Sampling;
using Evengrist.Plant.Cases;

namespace Evengrist.Plant.Answers;

/// <summary>A retained sample to test, with the most its load could hold, mg/kg.</summary>
public sealed record TestNextAnswer(string Code, decimal CouldHold, double? ChanceOver);

/// <summary>What a composite proves. Before test error; mg/kg.</summary>
public sealed record ScreenAnswer(
    string Verdict, decimal ProofLimit, IReadOnlyList<TestNextAnswer> TestNext, IReadOnlyList<string> Cleared, IReadOnlyList<string> Over, double? ChanceClears, double? ExpectedTests, int TestsOneByOne, string Assumed)
{
    /// <summary>Judges a posed composite.</summary>
    public static (ScreenAnswer? Answer, IReadOnlyList<string> Reasons) To(ScreenCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        var (outcome, trucks) = (ScreenModel.Judge(posed.Spec), posed.Spec.Trucks);
        var (verdict, next, cleared, over) = outcome switch
        {
            ScreenClears => ("clears all", [], trucks.Select(t => t.Code), []),
            ScreenOpen open => (open.TestNext.Count > 0 ? "does not clear all" : "some exceed the limit", open.TestNext, open.Cleared.Select(t => t.Code), open.Over.Select(t => t.Code)),
            _ => ("not tested yet", Array.Empty<SuspectTruck>(), Enumerable.Empty<string>(), Enumerable.Empty<string>()),
        };
        return (new ScreenAnswer(verdict, outcome.ProofLimit, [.. next.Select(s => new TestNextAnswer(s.Truck.Code, s.CouldHold, s.Truck.ChanceOver))], [.. cleared], [.. over], outcome.ChanceClears, outcome.ExpectedTests, trucks.Count,
            "composite mixed by mass; before test error; expected tests suppose that every retained sample is tested where the composite fails"), []);
    }
}
