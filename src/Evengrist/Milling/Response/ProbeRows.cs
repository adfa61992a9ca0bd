using System.Numerics;
using Evengrist.Milling.Stock;

namespace Evengrist.Milling.Response;

/// <summary>A row of columns for each part at each probe; the rows of probes solved for together lie lane by lane in one.</summary>
/// <param name="probes">How many probes.</param>
/// <param name="columns">How many columns.</param>
internal sealed class ProbeRows(int probes, int columns)
{
    // Row by row: one array for all would be large enough to be collected with the oldest, which costs more than the work itself.
    private readonly Vector<double>[][] rows = [.. Enumerable.Range(0, (probes + UnitWorth.Wide - 1) / UnitWorth.Wide * MillWheat.PartCount).Select(_ => new Vector<double>[columns])];

    public double this[int probe, int part, int column] => Row(probe, part)[column][probe % UnitWorth.Wide];

    /// <summary>The row of a probe, which it shares with those solved for together with it.</summary>
    public Vector<double>[] Row(int probe, int part) => rows[(probe / UnitWorth.Wide * MillWheat.PartCount) + part];

    /// <summary>The row of a probe, all parts together.</summary>
    public double[] Total(int probe)
    {
        var total = new double[columns];
        for (var part = 0; part < MillWheat.PartCount; part++)
        {
            var row = Row(probe, part);
            for (var j = 0; j < total.Length; j++)
            {
                total[j] += row[j][probe % UnitWorth.Wide];
            }
        }

        return total;
    }

    /// <summary>Adds other columns, each times a factor for each of these: this += other · factors.</summary>
    /// <param name="other">Rows of the same probes.</param>
    /// <param name="factors">By column of the other, the factor for each column here.</param>
    public void Add(ProbeRows other, double[][] factors)
    {
        for (var r = 0; r < rows.Length; r++)
        {
            var (to, from) = (rows[r], other.rows[r]);
            for (var p = 0; p < factors.Length; p++)
            {
                var (times, by) = (from[p], factors[p]);
                for (var j = 0; j < to.Length && j < by.Length; j++)
                {
                    to[j] = Vector.MultiplyAddEstimate(times, new Vector<double>(by[j]), to[j]);
                }
            }
        }
    }

    /// <summary>Sets all to 0.</summary>
    public void Clear()
    {
        foreach (var row in rows)
        {
            Array.Clear(row);
        }
    }
}
