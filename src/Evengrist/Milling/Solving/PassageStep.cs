using Evengrist.Milling.Grinding;
using Evengrist.Milling.Sheet;
using Evengrist.Milling.Stock;

namespace Evengrist.Milling.Solving;

/// <summary>What one passage makes of the stock that enters it: grind, then divide. No allocation.</summary>
internal static class PassageStep
{
    /// <summary>Sets the outlets of a passage from what enters it.</summary>
    /// <param name="model">The mill.</param>
    /// <param name="passage">Index of the passage.</param>
    /// <param name="load">Dry matter that enters, t/h, that rolls and cloths feel.</param>
    /// <param name="knobs">Settings.</param>
    /// <param name="state">Stock; <see cref="MillState.In"/> of the passage is read, its outlets are written.</param>
    /// <param name="whole">Whole kernels, already broken, that join behind the rolls, t/h by part and size at a feed of 1; empty where none do.</param>
    public static void Run(MillModel model, int passage, double load, MillKnobs knobs, MillState state, ReadOnlySpan<double> whole)
    {
        var (machine, width) = (model.Machines[passage], model.Width);
        var stock = state.Stock.AsSpan(0, width);
        state.In.AsSpan(passage * width, width).CopyTo(stock);
        if (machine.Steps > 0)
        {
            Grind(model, machine, passage, load, knobs, state, stock);
        }

        Lanes.Add(stock, whole, knobs.Feed);
        Divide(model, machine, passage, load, knobs, state, stock);
    }

    private static void Grind(MillModel model, Machine machine, int passage, double load, MillKnobs knobs, MillState state, Span<double> stock)
    {
        var ease = Math.Pow(knobs.Nip[passage], model.Parameters.NipExponent) * (machine.RollLoad > 0 && load > 0 ? Math.Pow(load / machine.RollLoad, -model.Parameters.RollLoadExponent) : 1);
        var n = model.Classes.Count;
        var broken = state.Broken.AsSpan(passage * stock.Length, stock.Length);
        var picked = state.Picked.AsSpan(0, stock.Length);
        var bran = (int)KernelPart.Bran * n;
        Lanes.Shares(machine.Odds, ease, 1 - machine.Flaked, broken);
        Lanes.Shares(machine.Odds.AsSpan(bran, n), ease * knobs.Bran[passage], 1 - machine.Flaked, broken.Slice(bran, n));
        for (var step = 0; step < machine.Steps; step++)
        {
            Lanes.Take(stock, broken, picked);
            for (var part = 0; part < MillWheat.PartCount; part++)
            {
                Fall(part < (int)KernelPart.Bran ? machine.Endosperm! : machine.Bran!, picked.Slice(part * n, n), stock.Slice(part * n, n));
            }
        }
    }

    private static void Fall(Children children, ReadOnlySpan<double> picked, Span<double> stock)
    {
        for (var parent = 0; parent < picked.Length; parent++)
        {
            Lanes.Add(stock, children.Parent(parent), picked[parent]);
        }
    }

    private static void Divide(MillModel model, Machine machine, int passage, double load, MillKnobs knobs, MillState state, Span<double> stock)
    {
        var (width, outlet, last) = (stock.Length, model.Ways.FirstOutlet[passage], model.Ways.FirstOutlet[passage + 1] - 1);
        if (machine.Falls.Length > 0)
        {
            Lift(model, machine, knobs.Air[passage], state.Leaves.AsSpan(outlet * width, width));
            Lanes.Take(stock, state.Leaves.AsSpan(outlet * width, width), state.Out.AsSpan(outlet * width, width));
            outlet++;
        }

        var burden = load / machine.ClothLoad;
        var thin = burden > 0 ? Math.Pow(burden, model.Parameters.ClothLoadExponent) : 1;
        var over = model.Parameters.CarryOver * burden * burden;
        var carried = over / (1 + over);
        for (var cloth = 0; outlet < last; cloth++, outlet++)
        {
            var leaves = state.Leaves.AsSpan(outlet * width, width);
            Stay(model, machine.Stays[cloth], Math.Pow(thin / knobs.Cut[outlet], model.ClothExponent), carried, knobs.Tear[outlet], machine.Passage.Cloths[cloth].Leaves is ClothSide.Overs, leaves);
            Lanes.Take(stock, leaves, state.Out.AsSpan(outlet * width, width));
        }

        stock.CopyTo(state.Out.AsSpan(last * width, width));
    }

    private static void Lift(MillModel model, Machine machine, double air, Span<double> leaves)
    {
        // Lifted is what does not fall: 1 − u/(1 + u).
        Span<double> kept = stackalloc double[machine.Falls.Length];
        Lanes.Shares(machine.Falls, Math.Pow(air, -model.Parameters.PurifierSharpness), 1, kept);
        foreach (ref var share in kept)
        {
            share = 1 - share;
        }

        Spread(model, kept, leaves);
    }

    private static void Stay(MillModel model, double[] stays, double ease, double carried, double tear, bool overs, Span<double> leaves)
    {
        var twice = 2 * model.Classes.Count;
        Span<double> points = stackalloc double[3 * twice];
        Span<double> kept = stackalloc double[twice];
        Lanes.Shares(stays, ease, 1 - carried, points);
        kept.Fill(overs ? carried : 1 - carried);
        for (var point = 0; point < 3; point++)
        {
            Lanes.Add(kept, points.Slice(point * twice, twice), overs ? SizeClasses.PointWeights[point] : -SizeClasses.PointWeights[point]);
        }

        if (tear != 0)
        {
            foreach (ref var share in kept)
            {
                share = overs ? share * (1 - tear) : share + (tear * (1 - share));
            }
        }

        Spread(model, kept, leaves);
    }

    // What a piece and a flake do, to every part by how far it clings to bran.
    private static void Spread(MillModel model, ReadOnlySpan<double> kept, Span<double> leaves)
    {
        var n = model.Classes.Count;
        for (var at = 0; at < leaves.Length; at += n)
        {
            Lanes.Mix(kept[..n], kept[n..], model.Clings.AsSpan(at, n), leaves.Slice(at, n));
        }
    }
}
