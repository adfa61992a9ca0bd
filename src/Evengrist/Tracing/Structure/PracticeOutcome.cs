using Evengrist.Ledger;

namespace Evengrist.Tracing.Structure;

/// <summary>How large recalls would be as the mill works today, from the ledger.</summary>
/// <param name="Question">What was asked.</param>
/// <param name="TrucksInSpan">Trucks that came in the span.</param>
/// <param name="Outflows">The hypotheses, in the order of the sizes.</param>
/// <param name="Trucks">Those traced that have reached a package, in the order they came.</param>
/// <param name="NotPackedYet">How many of those traced have reached none: they are in no mean.</param>
/// <param name="Each">Sizes under each hypothesis, kg.</param>
/// <param name="Union">Sizes under any of them, kg.</param>
/// <param name="PackagesKilograms">All packages filled from the first of the span to the moment looked back from, kg.</param>
public sealed record PracticeOutcome(
    PracticeQuestion Question, int TrucksInSpan, IReadOnlyList<Outflow> Outflows, IReadOnlyList<PracticeTruck> Trucks, int NotPackedYet, IReadOnlyList<RecallSizes> Each, RecallSizes Union, double PackagesKilograms)
{
    /// <summary>How many trucks were traced.</summary>
    public int Traced => Trucks.Count + NotPackedYet;

    /// <summary>Whether not all were.</summary>
    public bool IsSample => Traced < TrucksInSpan;

    /// <summary>Standard error of the union's mean where only a part was traced, kg: s/√n·√(1 − n/N); 0 where all were.</summary>
    public double StandardError
    {
        get
        {
            var n = Trucks.Count;
            if (!IsSample || n < 2)
            {
                return 0;
            }

            var mean = Union.Expected;
            return Math.Sqrt(Trucks.Sum(t => (t.RecallUnion - mean) * (t.RecallUnion - mean)) / (n - 1) / n * (1 - Traced / (double)TrucksInSpan));
        }
    }
}
