namespace Evengrist.Milling.Grinding;

/// <summary>A table with given sums of rows and of columns that departs least from a first guess: rows and columns scaled in turn.</summary>
internal static class MarginFit
{
    private const int Rounds = 200;
    private const double Enough = 1e-14;

    /// <summary>The table, row by row.</summary>
    /// <param name="seed">First guess, row by row; every entry above 0.</param>
    /// <param name="rows">Sum of each row, not below 0.</param>
    /// <param name="columns">Sum of each column, not below 0; together the same as the rows.</param>
    public static double[] Of(double[] seed, double[] rows, double[] columns)
    {
        var table = (double[])seed.Clone();
        var width = columns.Length;
        for (var round = 0; round < Rounds; round++)
        {
            for (var j = 0; j < width; j++)
            {
                var sum = 0.0;
                for (var i = 0; i < rows.Length; i++)
                {
                    sum += table[(i * width) + j];
                }

                for (var i = 0; i < rows.Length; i++)
                {
                    table[(i * width) + j] *= sum > 0 ? columns[j] / sum : 0;
                }
            }

            var worst = 0.0;
            for (var i = 0; i < rows.Length; i++)
            {
                var row = table.AsSpan(i * width, width);
                var sum = 0.0;
                foreach (var entry in row)
                {
                    sum += entry;
                }

                worst = Math.Max(worst, Math.Abs(sum - rows[i]));
                for (var j = 0; j < width; j++)
                {
                    row[j] *= sum > 0 ? rows[i] / sum : 0;
                }
            }

            if (worst < Enough)
            {
                break;
            }
        }

        return table;
    }
}
