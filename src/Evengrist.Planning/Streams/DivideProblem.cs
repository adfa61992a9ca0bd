using Evengrist.Planning.Solving;
using Evengrist.Streams;
using Evengrist.Streams.Dividing;

namespace Evengrist.Planning.Streams;

/// <summary>The best divide as a linear problem with whole numbers: a column for each stream and each place it may go to. Page: docs/model/divide.md.</summary>
internal static class DivideProblem
{
    // A share below this is the rounding of the solver.
    private const double Nothing = 1e-7;

    /// <summary>Solves a question without faults.</summary>
    /// <returns>What the solver answered, and for each stream its share to each place; no shares without an answer.</returns>
    public static (LinearAnswer Answer, IReadOnlyList<double[]> Shares) Solve(DivideSpec spec, TimeSpan longest, CancellationToken stop)
    {
        var problem = new LinearProblem();
        var (streams, places) = (spec.Table.Streams, spec.Places);
        var columns = new int?[streams.Count, places.Count];
        for (var s = 0; s < streams.Count; s++)
        {
            var (stream, whole) = (streams[s], spec.ValveOf(streams[s]) is not { Splits: true, Locked: null });
            var all = problem.Row($"all of {stream.Code}", 1, 1);
            for (var p = 0; p < places.Count; p++)
            {
                if (spec.MayGo(stream, places[p]))
                {
                    var column = problem.Column($"{stream.Code} to {places[p].Code}", 0, 1, -(double)spec.PerHour(stream.Yield, places[p].PricePerTonne), whole);
                    problem.Put(all, column, 1);
                    columns[s, p] = column;
                }
            }
        }

        for (var p = 0; p < spec.Flours.Count; p++)
        {
            var (flour, place) = (spec.Flours[p], p);
            if (flour.LeastYield is not null || flour.MostYield is not null)
            {
                Row($"yield of {flour.Code}", flour.LeastYield ?? 0, flour.MostYield ?? double.PositiveInfinity, s => s.Yield);
            }

            foreach (var end in flour.Ends(spec.Table.Basis))
            {
                Row($"{flour.Code} {end.Words}", 0, double.PositiveInfinity, s => s.Yield * end.Spare(s));
            }

            void Row(string name, double least, double most, Func<MillStream, double> of)
            {
                var row = problem.Row(name, least, most);
                for (var s = 0; s < streams.Count; s++)
                {
                    if (columns[s, place] is { } column)
                    {
                        problem.Put(row, column, of(streams[s]));
                    }
                }
            }
        }

        var answer = LinearSolver.Solve(problem, new SolveOptions { RelativeGap = 0, Longest = longest }, stop);
        return (answer, answer.HasValues ? [.. streams.Select((_, s) => Shares(s))] : []);

        double[] Shares(int s)
        {
            var whole = spec.ValveOf(streams[s]) is not { Splits: true, Locked: null };
            double[] shares = [.. Enumerable.Range(0, places.Count).Select(p => columns[s, p] is { } c ? answer.Values[c] : 0).Select(x => whole ? Math.Round(x) : x < Nothing ? 0 : x)];
            var sum = shares.Sum();
            return [.. shares.Select(x => x / sum)];
        }
    }
}
