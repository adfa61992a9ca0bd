using Evengrist.Planning.Solving;
using Evengrist.Streams;
using Evengrist.Streams.Dividing;
using MathNet.Numerics.Distributions;

namespace Evengrist.Planning.Streams;

/// <summary>The best divide as a linear problem with whole numbers: a column for each stream and each place it may go to. Page: docs/model/divide.md.</summary>
internal sealed class DivideProblem
{
    // A share below this is the rounding of the solver.
    private const double Nothing = 1e-7;

    // What a limit with a chance may be missed by, of the size of its margin.
    private const double Missed = 5e-7;
    private const int FreeRounds = 60;

    private readonly DivideSpec spec;
    private readonly IReadOnlyList<MillStream> streams;
    private readonly IReadOnlyList<FlourWish> places;
    private readonly (int Place, LimitEnd End)[] ends;
    private readonly List<(int Place, double[] ByStream)> cuts = [];
    private readonly double z;
    private readonly int?[,] columns;

    private DivideProblem(DivideSpec spec)
    {
        (this.spec, streams, places) = (spec, spec.Table.Streams, spec.Places);
        ends = [.. spec.Flours.SelectMany((f, p) => f.Ends(spec.Table.Basis).Select(e => (p, e)))];
        z = spec.Sure is { } sure and > 0.5 ? Normal.InvCDF(0, 1, sure) : 0;
        columns = new int?[streams.Count, places.Count];
    }

    /// <summary>Solves a question without faults.</summary>
    /// <returns>What the solver answered, and for each stream its share to each place; no shares without an answer.</returns>
    public static (LinearAnswer Answer, IReadOnlyList<double[]> Shares) Solve(DivideSpec spec, TimeSpan longest, CancellationToken stop) => new DivideProblem(spec).Run(longest, stop);

    private (LinearAnswer Answer, IReadOnlyList<double[]> Shares) Run(TimeSpan longest, CancellationToken stop)
    {
        var took = TimeSpan.Zero;
        var answer = new LinearAnswer(ExitReason.TimeReached, double.NaN, double.NegativeInfinity, [], [], [], took);
        answer = Solved(free: z > 0);

        // Streams that may be shared first: the tangents found there hold for whole ones too, and cost next to nothing.
        for (var round = 0; z > 0 && answer.HasValues && round < FreeRounds && Cut(answer) > 0; round++)
        {
            answer = Solved(free: true);
        }

        answer = z > 0 && answer.HasValues ? Solved(free: false) : answer;
        while (answer.HasValues && Cut(answer) > 0)
        {
            answer = Solved(free: false);
        }

        return (answer with { Took = took }, answer.HasValues ? [.. streams.Select((_, s) => Shares(answer, s))] : []);

        LinearAnswer Solved(bool free)
        {
            if (took >= longest)
            {
                return answer with { Exit = ExitReason.TimeReached, Values = [] };
            }

            var solved = LinearSolver.Solve(Built(free), new SolveOptions { RelativeGap = 0, Longest = longest - took }, stop);
            took += solved.Took;
            return solved;
        }
    }

    private LinearProblem Built(bool free)
    {
        var problem = new LinearProblem();
        for (var s = 0; s < streams.Count; s++)
        {
            var all = problem.Row($"all of {streams[s].Code}", 1, 1);
            for (var p = 0; p < places.Count; p++)
            {
                if (spec.MayGo(streams[s], places[p]))
                {
                    columns[s, p] = problem.Column($"{streams[s].Code} to {places[p].Code}", 0, 1, -(double)spec.PerHour(streams[s].Yield, places[p].PricePerTonne), !free && IsWhole(s));
                    problem.Put(all, columns[s, p]!.Value, 1);
                }
            }
        }

        foreach (var (p, flour) in spec.Flours.Index().Where(f => f.Item.LeastYield is not null || f.Item.MostYield is not null))
        {
            Row($"yield of {flour.Code}", p, flour.LeastYield ?? 0, flour.MostYield ?? double.PositiveInfinity, s => streams[s].Yield);
        }

        foreach (var (p, end) in ends)
        {
            Row($"{places[p].Code} {end.Words}", p, 0, double.PositiveInfinity, s => streams[s].Yield * end.Spare(streams[s]));
        }

        foreach (var (n, (p, byStream)) in cuts.Index())
        {
            Row($"cut {n}", p, 0, double.PositiveInfinity, s => byStream[s]);
        }

        return problem;

        void Row(string name, int place, double least, double most, Func<int, double> of)
        {
            var row = problem.Row(name, least, most);
            for (var s = 0; s < streams.Count; s++)
            {
                if (columns[s, place] is { } column)
                {
                    problem.Put(row, column, of(s));
                }
            }
        }
    }

    // Limits to be kept with a chance: Σ y·x·m ≥ z·√Σ (y·x)²(u² + r²m²). The root is convex and of first degree, so its tangent lies below it everywhere and cuts off nothing that is allowed.
    private int Cut(LinearAnswer answer)
    {
        var before = cuts.Count;
        foreach (var (p, end) in z > 0 ? ends : [])
        {
            int[] open = [.. Enumerable.Range(0, streams.Count).Where(s => columns[s, p] is not null)];
            var shares = new double[streams.Count];
            foreach (var s in open)
            {
                shares[s] = Shares(answer, s)[p];
            }

            var spare = open.Sum(s => streams[s].Yield * shares[s] * end.Spare(streams[s]));
            var root = Math.Sqrt(open.Sum(s => shares[s] * shares[s] * Variance(streams[s], end)));
            if (spare < (z * root) - (Missed * Math.Max(1, root)))
            {
                var tangent = new double[streams.Count];
                foreach (var s in open)
                {
                    tangent[s] = (streams[s].Yield * end.Spare(streams[s])) - (z * shares[s] * Variance(streams[s], end) / root);
                }

                cuts.Add((p, tangent));
            }
        }

        return cuts.Count - before;
    }

    private double Variance(MillStream stream, LimitEnd end) =>
        stream.Yield * stream.Yield * (Math.Pow(end.Unsure(stream, spec.Table.Methods), 2) + Math.Pow(spec.Table.Methods.YieldShare * end.Spare(stream), 2));

    private bool IsWhole(int stream) => spec.ValveOf(streams[stream]) is not { Splits: true, Locked: null };

    // A whole share is rounded only where the answer has it whole: while streams may be shared it is as it came.
    private double[] Shares(LinearAnswer answer, int s)
    {
        double[] shares = [.. Enumerable.Range(0, places.Count).Select(p => columns[s, p] is { } c ? answer.Values[c] : 0).Select(x => x < Nothing ? 0 : x > 1 - Nothing ? 1 : x)];
        if (IsWhole(s) && shares.All(x => Math.Abs(x - Math.Round(x)) < 1e-4))
        {
            shares = [.. shares.Select(x => Math.Round(x))];
        }

        var sum = shares.Sum();
        return [.. shares.Select(x => x / sum)];
    }
}
