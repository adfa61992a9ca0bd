namespace Evengrist.Season.Bands;

/// <summary>What of a harvest reads within one step of protein, in one class of falling number: its true sums.</summary>
/// <param name="Tonnes">t as it lies.</param>
/// <param name="Moisture">t·per cent.</param>
/// <param name="Sums">Weighted sums on the scale, in the order of the grid's properties.</param>
/// <param name="Weights">Their weights.</param>
internal sealed record HarvestCell(double Tonnes, double Moisture, double[] Sums, double[] Weights)
{
    public static HarvestCell Nothing(int properties) => new(0, 0, new double[properties], new double[properties]);

    public HarvestCell And(HarvestCell other) => new(
        Tonnes + other.Tonnes, Moisture + other.Moisture, [.. Sums.Zip(other.Sums, (a, b) => a + b)], [.. Weights.Zip(other.Weights, (a, b) => a + b)]);

    public HarvestCell Less(HarvestCell other) => new(
        Tonnes - other.Tonnes, Moisture - other.Moisture, [.. Sums.Zip(other.Sums, (a, b) => a - b)], [.. Weights.Zip(other.Weights, (a, b) => a - b)]);
}
