using Evengrist.Milling.Reconciling;
using Evengrist.Numerics.Reconciling;
using Evengrist.Plant.Cases;

namespace Evengrist.Plant.Answers;

/// <summary>Streams reconciled. Amounts in the unit posed, shares of 1; every ± is k = 2.</summary>
/// <param name="Fits">Whether the measurements go together; null where nothing checks them.</param>
/// <param name="Check">The test, the suspects and each value.</param>
/// <param name="Rest">Each value without the suspects; empty where there are none.</param>
public sealed record FlowNetAnswer(bool? Fits, CheckAnswer Check, IReadOnlyList<ReconciledValueAnswer> Rest)
{
    /// <summary>Answers a case, or says why there is no answer.</summary>
    public static Reply<FlowNetAnswer> To(FlowNetCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        return Of(new FlowNet(posed.Flows, posed.Nodes).Reconcile(posed.Level), posed.Level);
    }

    /// <summary>Answers what came of reconciling, or says why there is no answer.</summary>
    /// <param name="outcome">What came of it.</param>
    /// <param name="level">Chance of a false alarm it was judged by.</param>
    public static Reply<FlowNetAnswer> Of(GrossErrorOutcome outcome, double level)
    {
        ArgumentNullException.ThrowIfNull(outcome);
        return outcome.First switch
        {
            Balanced => new(new FlowNetAnswer((outcome.First as Reconciled)?.Fails(level) switch { true => false, false => true, null => null }, CheckAnswer.Of(outcome, level)!, [.. ((outcome as GrossErrorsNamed)?.Rest.Values ?? []).Select(ReconciledValueAnswer.Of)]), []),
            ConstraintsClash clash => new(null, [$"What is said to be known exactly does not go together: {string.Join(", ", clash.Names)}. Give the streams there uncertainties."]),
            NotConverged none => new(null, [$"It did not come to rest in {none.Rounds} rounds: look for a share that is sought in a stream of nearly nothing."]),
            ReconcileRefused refused => new(null, refused.Faults),
            var other => throw new InvalidOperationException($"Reconciling ended as {other.GetType().Name}."),
        };
    }
}
