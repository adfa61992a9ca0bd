using Evengrist.Planning.Solving;

namespace Evengrist.Planning.Season.Mixing;

/// <summary>Finds which wheats every flour is to draw when, by choosing among mixes that keep gates and shares.</summary>
/// <remarks>
/// A mix that would lower the cost at the duals is priced out for every flour and period and taken in, until none would (column generation). A vertex of what then stands uses several mixes in few
/// flours and periods only: not more than there are rows that bind periods together. The dive settles the most decided of those, and a quarter of the others, and solves on, until all is settled.
/// Then those that would gain most by other wheats are loosened and it dives again, more of them each time that brings nothing.
/// </remarks>
internal sealed class MixDive : IDisposable
{
    private const int MostRounds = 12;
    private const int Quarter = 4;
    private const int FirstLoose = 48;
    private const double Lean = 0.8;
    private const double Settles = 1e-4;
    private static readonly Dictionary<(int Flour, int Period), int[]> None = [];
    private readonly SeasonModel model;
    private readonly MixBook book;
    private readonly CancellationToken stop;
    private readonly double enough;
    private readonly Dictionary<(int Flour, int Period), int[]> settled = [];

    /// <param name="model">The linear problem.</param>
    /// <param name="linear">Its answer.</param>
    /// <param name="near">How near to the linear plan's cost all mixes together have to come; a share.</param>
    /// <param name="stop">Stops it.</param>
    public MixDive(SeasonModel model, LinearAnswer linear, double near, CancellationToken stop)
    {
        (this.model, this.stop) = (model, stop);
        enough = linear.Cost + (near * Math.Abs(linear.Cost));
        book = new MixBook(model, linear);
    }

    private MixMaster Master => book.Master;

    private bool IsOn => Master.Answer.HasValues && !stop.IsCancellationRequested;

    /// <summary>Choices of wheats to try, each likely to be better than the one before; none where no mixes fit together.</summary>
    /// <param name="known">An answer of the linear problem that keeps the rules; null where none is known.</param>
    public IEnumerable<Supports> Tries(IReadOnlyList<double>? known)
    {
        Converge(known);
        if (!IsOn)
        {
            yield break;
        }

        yield return Rounded();
        Dive();
        if (IsOn)
        {
            yield return Rounded();
        }

        for (var loose = FirstLoose; IsOn && loose < 2 * book.Count;)
        {
            var (before, kept) = (Master.Answer.Cost, settled.ToDictionary());
            if (!Loosen(loose))
            {
                yield break;
            }

            Dive();
            if (IsOn && Master.Answer.Cost < before - (Settles / 10 * Math.Abs(before)))
            {
                loose = FirstLoose;
                yield return Rounded();
            }
            else
            {
                Restore(kept);
                loose *= 2;
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose() => book.Dispose();

    private void Converge(IReadOnlyList<double>? known)
    {
        book.Seed(known);
        Master.Solve(stop);
        var (before, lean) = (double.PositiveInfinity, Lean);
        for (var round = 0; round < MostRounds && IsOn && Master.Answer.Cost > enough; round++)
        {
            var moved = before - Master.Answer.Cost > Settles * Math.Abs(Master.Answer.Cost);
            if (!moved && lean == 0)
            {
                break;
            }

            (before, lean) = (Master.Answer.Cost, moved ? Lean : 0);
            book.Price(lean, settled);
            Master.Solve(stop);
        }
    }

    private void Dive()
    {
        for (var round = 0; IsOn; round++)
        {
            var used = Master.Used();
            var split = used.Where(u => book.Joined(u) is null).Select(MixBook.Most).OrderByDescending(m => m.Part).ToList();
            foreach (var mixes in used.Where(u => (split.Count == 0 || u.Key.Period % Quarter == round % Quarter) && !settled.ContainsKey(u.Key)))
            {
                if (book.Joined(mixes) is { } joined)
                {
                    Master.Add(joined);
                    Settle(mixes.Key, joined.Wheats);
                }
            }

            if (split.Count == 0)
            {
                Master.Solve(stop);
                return;
            }

            foreach (var (mix, _) in split.Take((split.Count + Quarter - 1) / Quarter))
            {
                Settle((mix.Flour, mix.Period), mix.Wheats);
            }

            Master.Solve(stop);
            if (IsOn)
            {
                book.Price(0, settled);
                Master.Solve(stop);
            }
        }
    }

    private bool Loosen(int most)
    {
        var gains = book.Price(0, None).OrderByDescending(g => g.Gain).Take(most).ToList();
        foreach (var (key, _) in gains)
        {
            settled.Remove(key);
            Master.Free(key.Flour, key.Period);
        }

        Master.Solve(stop);
        return gains.Count > 0;
    }

    private void Restore(Dictionary<(int Flour, int Period), int[]> kept)
    {
        foreach (var key in settled.Keys.Except(kept.Keys).ToList())
        {
            settled.Remove(key);
            Master.Free(key.Flour, key.Period);
        }

        foreach (var (key, wheats) in kept)
        {
            if (!settled.TryGetValue(key, out var now) || now != wheats)
            {
                Master.Free(key.Flour, key.Period);
                Settle(key, wheats);
            }
        }

        Master.Solve(stop);
    }

    private void Settle((int Flour, int Period) key, int[] wheats)
    {
        settled[key] = wheats;
        Master.Keep(key.Flour, key.Period, wheats);
    }

    private Supports Rounded()
    {
        var drawn = Master.Used().ToDictionary(u => u.Key, u => (book.Joined(u) ?? MixBook.Most(u).Mix).Wheats);
        return Supports.Given(model, drawn, f => !MixRules.Any(model.Spec.Flours[f]));
    }
}
