using Evengrist.Planning.Solving;

namespace Evengrist.Planning.Mix;

/// <summary>Adds tangents until what is linear has an answer that misses no end.</summary>
internal static class Tightening
{
    private const double Miss = 1e-9;

    // Once tangents no longer halve a miss below this, they lie too close together to be told apart; the answer is as good as numbers have it.
    private const double Let = 1e-7;
    private const int MostRounds = 200;

    /// <summary>Tightens a frame; no values where it has no answer.</summary>
    public static (ExitReason Exit, double[] Values) Of(GateFrame frame)
    {
        var before = double.PositiveInfinity;
        for (var round = 0; round < MostRounds; round++)
        {
            var exit = frame.Tableau.Solve();
            if (exit != ExitReason.Optimal)
            {
                return (exit, []);
            }

            var values = frame.Tableau.Values();
            var missed = frame.Cut(frame.Tableau, values, Miss);
            if (missed <= Miss || (missed <= Let && missed > before / 2))
            {
                return (ExitReason.Optimal, values);
            }

            before = missed;
        }

        return (ExitReason.SolverFailed, []);
    }
}
