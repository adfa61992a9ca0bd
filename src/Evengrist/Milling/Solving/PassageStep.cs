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
    /// <param name="whole">Whether whole kernels, already broken, join behind the rolls.</param>
    public static void Run(MillModel model, int passage, double load, MillKnobs knobs, MillState state, ReadOnlySpan<double> whole)
    {
        var (machine, width) = (model.Machines[passage], model.Width);
        var stock = state.Stock.AsSpan(0, width);
        state.In.AsSpan(passage * width, width).CopyTo(stock);
        if (machine.Steps > 0)
        {
            Grind(model, machine, passage, load, knobs, state, stock);
        }

        for (var i = 0; i < whole.Length; i++)
        {
            stock[i] += whole[i] * knobs.Feed;
        }

        Divide(model, machine, passage, load, knobs, state, stock);
    }

    private static void Grind(MillModel model, Machine machine, int passage, double load, MillKnobs knobs, MillState state, Span<double> stock)
    {
        var ease = machine.RollLoad <= 0 ? 1
            : Math.Pow(knobs.Nip[passage], model.Parameters.NipExponent) * (load > 0 ? Math.Pow(load / machine.RollLoad, -model.Parameters.RollLoadExponent) : 1);
        var n = model.Classes.Count;
        var broken = state.Broken.AsSpan(passage * stock.Length, stock.Length);
        var picked = state.Picked.AsSpan(0, stock.Length);
        var bran = (int)KernelPart.Bran * n;
        for (var k = 0; k < stock.Length; k++)
        {
            var odds = machine.Odds[k] * ease * (k >= bran && k < bran + n ? knobs.Bran[passage] : 1);
            broken[k] = (1 - machine.Flaked) * odds / (1 + odds);
        }

        for (var step = 0; step < machine.Steps; step++)
        {
            for (var k = 0; k < stock.Length; k++)
            {
                picked[k] = broken[k] * stock[k];
                stock[k] -= picked[k];
            }

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
            var amount = picked[parent];
            var shares = children.Parent(parent);
            for (var child = 0; child < shares.Length; child++)
            {
                stock[child] += amount * shares[child];
            }
        }
    }

    private static void Divide(MillModel model, Machine machine, int passage, double load, MillKnobs knobs, MillState state, Span<double> stock)
    {
        var (outlet, last) = (model.Ways.FirstOutlet[passage], model.Ways.FirstOutlet[passage + 1] - 1);
        if (machine.Falls.Length > 0)
        {
            Lift(model, machine, knobs.Air[passage], state.Leaves.AsSpan(outlet * stock.Length, stock.Length));
            Leave(state, outlet++, stock);
        }

        var burden = load / machine.ClothLoad;
        var thin = burden > 0 ? Math.Pow(burden, model.Parameters.ClothLoadExponent) : 1;
        var over = model.Parameters.CarryOver * burden * burden;
        var carried = over / (1 + over);
        for (var cloth = 0; outlet < last; cloth++, outlet++)
        {
            var leaves = state.Leaves.AsSpan(outlet * stock.Length, stock.Length);
            Stay(model, machine.Stays[cloth], Math.Pow(thin / knobs.Cut[outlet], model.ClothExponent), carried, machine.Passage.Cloths[cloth].Leaves is ClothSide.Overs, leaves);
            Leave(state, outlet, stock);
        }

        stock.CopyTo(state.Out.AsSpan(last * stock.Length, stock.Length));
    }

    private static void Leave(MillState state, int outlet, Span<double> stock)
    {
        var leaves = state.Leaves.AsSpan(outlet * stock.Length, stock.Length);
        var gone = state.Out.AsSpan(outlet * stock.Length, stock.Length);
        for (var k = 0; k < stock.Length; k++)
        {
            gone[k] = leaves[k] * stock[k];
            stock[k] -= gone[k];
        }
    }

    private static void Lift(MillModel model, Machine machine, double air, Span<double> leaves)
    {
        var (n, ease) = (model.Classes.Count, Math.Pow(air, -model.Parameters.PurifierSharpness));
        for (var k = 0; k < leaves.Length; k++)
        {
            var size = k % n;
            leaves[k] = Mixed(model.Clings[k], 1 / (1 + (machine.Falls[size] * ease)), 1 / (1 + (machine.Falls[n + size] * ease)));
        }
    }

    private static void Stay(MillModel model, double[] stays, double ease, double carried, bool overs, Span<double> leaves)
    {
        var n = model.Classes.Count;
        var weights = SizeClasses.PointWeights;
        Span<double> kept = stackalloc double[2 * n];
        for (var i = 0; i < kept.Length; i++)
        {
            var sum = 0.0;
            for (var point = 0; point < 3; point++)
            {
                var odds = stays[(3 * i) + point] * ease;
                sum += weights[point] * odds / (1 + odds);
            }

            var stay = carried + ((1 - carried) * sum);
            kept[i] = overs ? stay : 1 - stay;
        }

        for (var k = 0; k < leaves.Length; k++)
        {
            var size = k % n;
            leaves[k] = Mixed(model.Clings[k], kept[size], kept[n + size]);
        }
    }

    private static double Mixed(double clings, double piece, double flake) => piece + (clings * (flake - piece));
}
