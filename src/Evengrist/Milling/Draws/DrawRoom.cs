using Evengrist.Milling.Solving;
using Evengrist.Numerics;

namespace Evengrist.Milling.Draws;

/// <summary>Room in which mills are drawn one after the other. What a draw gives depends on the seed and its number alone.</summary>
public sealed class DrawRoom
{
    private readonly DrawFrame frame;
    private readonly MillRun now;
    private readonly MillRun? then;
    private readonly bool isOrderKept;
    private readonly double[] normals;
    private readonly double[] values;

    internal DrawRoom(DrawFrame frame)
    {
        (this.frame, now, then) = (frame, new MillRun(frame.Now.Model), frame.Then is { } other ? new MillRun(other.Model) : null);
        isOrderKept = then is null || then.Model.Ways.Passages.Select(p => p.Code).SequenceEqual(now.Model.Ways.Passages.Select(p => p.Code));
        (normals, values) = (new double[frame.Root.Count], new double[frame.Root.Count]);
    }

    /// <summary>Draws a mill, solves it at each setting, and reads its figures, the model's shortfall drawn too.</summary>
    /// <param name="number">Number of the draw, from 0.</param>
    /// <returns>Its figures by column; null where it could not be solved.</returns>
    public double[]? Draw(int number)
    {
        var draws = new SeededDraws(frame.Spec.Seed, number);
        for (var i = 0; i < normals.Length; i++)
        {
            normals[i] = draws.Normal();
        }

        frame.Root.Spread(frame.Spec.Tuning.Values, normals, values);
        var (row, width) = (new double[frame.Columns], frame.Now.Figures.Count);
        frame.Now.Middle.State.Out.CopyTo(now.State.Out, 0);
        if (!Solve(frame.Now, now, row.AsSpan(0, width)) || (then is not null && !SolveThen(row.AsSpan(width, width))))
        {
            return null;
        }

        if (then is not null)
        {
            foreach (var (at, before, after) in frame.Worth)
            {
                row[^1] += (before * row[at]) + (after * row[width + at]);
            }

            row[^1] += frame.MoneyShortfall * draws.Normal();
            for (var k = 0; k < width; k++)
            {
                row[width + k] += (frame.ChangeShortfalls[k] * draws.Normal()) - row[k];
            }
        }

        for (var k = 0; k < width; k++)
        {
            row[k] += frame.Shortfalls[k] * draws.Normal();
        }

        return row;
    }

    private bool Solve(DrawnMill mill, MillRun run, Span<double> row)
    {
        mill.Set(run, values);
        if (run.Solve().Exit is not MillExit.Converged)
        {
            return false;
        }

        mill.Read(run, values, row);
        return true;
    }

    // It begins from its own middle, moved as far as this draw moved the mill as it is; the order of the passages may be another where an outlet is led elsewhere.
    private bool SolveThen(Span<double> row)
    {
        var (mill, run) = (frame.Then!, then!);
        var (middle, from, to, moved) = (mill.Middle.State.Out, frame.Now.Middle.State.Out, now.State.Out, run.State.Out);
        for (var k = 0; k < moved.Length; k++)
        {
            moved[k] = isOrderKept ? Math.Max(0, middle[k] + to[k] - from[k]) : middle[k];
        }

        return Solve(mill, run, row);
    }
}
