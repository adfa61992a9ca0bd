namespace Evengrist.Tracing.Structure;

/// <summary>Reckons on paper how large recalls would be under a way of keeping lots apart, and what that way costs. Model: docs/model/lot-structure.md.</summary>
/// <remarks>Trucks fill bins, a mix draws equal parts from the open bins, each lot of wheat becomes a lot of product in one flour bin with its heel, flush and clean-outs. Nothing is left to chance.</remarks>
public static class StructureModel
{
    /// <summary>Reckons a way.</summary>
    /// <exception cref="ArgumentException">It has faults.</exception>
    public static StructureOutcome Of(StructureSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (spec.Faults() is { Count: > 0 } faults)
        {
            throw new ArgumentException(string.Join(" ", faults), nameof(spec));
        }

        var lanes = Filled(spec);
        var flour = new FlourVessel(spec);
        var milled = new double[spec.Trucks.Count];
        var each = spec.LotKilograms / lanes.Length;
        while (lanes.All(l => l.Kilograms >= each - 1e-6))
        {
            var mixture = new Dictionary<int, double>();
            Array.ForEach(lanes, l => l.Draw(each, mixture));
            foreach (var (truck, kilograms) in mixture)
            {
                milled[truck] += kilograms;
            }

            flour.Take(mixture);
        }

        return Outcome(spec, flour, milled);
    }

    private static WheatLane[] Filled(StructureSpec spec)
    {
        var lanes = Enumerable.Range(0, spec.BinsPerMix).Select(_ => new WheatLane(spec.Emptying)).ToArray();
        for (var (truck, lane) = (0, 0); truck < spec.Trucks.Count; truck++)
        {
            lanes[lane].Fill(truck, spec.Trucks[truck], spec.BinKilograms);
            lane = spec.Order == BinOrder.InTurn || !lanes[lane].IsOpen ? (lane + 1) % lanes.Length : lane;
        }

        Array.ForEach(lanes, l => l.Close());
        return lanes;
    }

    private static StructureOutcome Outcome(StructureSpec spec, FlourVessel flour, double[] milled)
    {
        var whole = Enumerable.Range(0, milled.Length).Where(t => milled[t] >= spec.Trucks[t] - 1e-3).ToArray();
        var number = new int[milled.Length];
        Array.Fill(number, -1);
        for (var i = 0; i < whole.Length; i++)
        {
            number[whole[i]] = i;
        }

        var links = flour.Links.Where(l => number[l.Truck] >= 0).Select(l => (number[l.Truck], l.Lot));
        var sizes = RecallSizes.Of([.. whole.Select(t => spec.Trucks[t])], flour.Lots, links);
        return new(spec, sizes, flour.Lots.Count > 0 ? flour.Links.Count / (double)flour.Lots.Count : 0, flour.Lots, whole.Length, flour.Lots.Sum(), flour.SetAside, flour.CleanOuts, flour.CleanOuts * spec.HoursEachCleanOut, flour.Kilograms);
    }
}
