using System.Globalization;
using Evengrist.Intake.Sampling;

namespace Evengrist.Plant.Answers;

/// <summary>Advice of sampling in words.</summary>
public static class SamplingWords
{
    /// <summary>What to do about the edges near a reading.</summary>
    public static string Advice(EdgeAdvice advice) => advice switch
    {
        ProbeAgain again => Text($"Probe again: {again.More} more {(again.More == 1 ? "probe" : "probes")} would settle it, if their mean stays where the reading is. The edge at {again.Because.Edge.At:0.####} is {100 * again.Because.ChanceRightSide:0.0} % sure."),
        NoProbeSettles none => Text($"Too near the edge at {none.Because.Edge.At:0.####} ({100 * none.Because.ChanceRightSide:0.0} % sure) for further probes to settle it: the instrument's own error, or the closeness, is in the way. Take it as contract or policy say."),
        _ => "Take the band: every edge within reach is settled.",
    };

    /// <summary>Whether to test, in words.</summary>
    public static string Advice(TestOutcome outcome)
    {
        ArgumentNullException.ThrowIfNull(outcome);
        var without = outcome.AcceptUntested ? "the good bin" : "the lesser bin";
        return outcome is TestNow ? Text($"Test now: it avoids {outcome.Value:0.00} and costs {outcome.QueueCost + outcome.OwnCost:0.00}.")
            : Text($"Go without, into {without}: the test would avoid {outcome.Value:0.00} and cost {outcome.QueueCost + outcome.OwnCost:0.00}.");
    }

    private static string Text(FormattableString words) => words.ToString(CultureInfo.InvariantCulture);
}
