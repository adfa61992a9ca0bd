using System.Globalization;
using System.Text;
using Evengrist.Planning.Solving;

namespace Evengrist.Bench.Season;

/// <summary>Writes a problem as free MPS, every figure in full, so that other programs solve the same one.</summary>
internal static class Mps
{
    public static void Write(LinearProblem problem, string file)
    {
        var text = new StringBuilder("NAME season\nROWS\n N cost\n");
        for (var r = 0; r < problem.Rows.Count; r++)
        {
            var row = problem.Rows[r];
            text.Append(CultureInfo.InvariantCulture, $" {(row.Lower == row.Upper ? 'E' : double.IsInfinity(row.Lower) ? 'L' : 'G')} r{r}\n");
        }

        var terms = problem.Terms.ToLookup(t => t.Column);
        text.Append("COLUMNS\n");
        foreach (var whole in new[] { false, true })
        {
            text.Append(whole ? " M1 'MARKER' 'INTORG'\n" : "");
            for (var c = 0; c < problem.Columns.Count; c++)
            {
                if (problem.Columns[c].IsWhole == whole)
                {
                    text.Append(CultureInfo.InvariantCulture, $" c{c} cost {problem.Columns[c].Cost:R}\n");
                    foreach (var term in terms[c])
                    {
                        text.Append(CultureInfo.InvariantCulture, $" c{c} r{term.Row} {term.Coefficient:R}\n");
                    }
                }
            }

            text.Append(whole ? " M2 'MARKER' 'INTEND'\n" : "");
        }

        text.Append("RHS\n");
        for (var r = 0; r < problem.Rows.Count; r++)
        {
            var row = problem.Rows[r];
            text.Append(CultureInfo.InvariantCulture, $" RHS r{r} {(double.IsInfinity(row.Lower) ? row.Upper : row.Lower):R}\n");
        }

        text.Append("RANGES\n");
        for (var r = 0; r < problem.Rows.Count; r++)
        {
            var row = problem.Rows[r];
            if (row.Lower != row.Upper && double.IsFinite(row.Lower) && double.IsFinite(row.Upper))
            {
                text.Append(CultureInfo.InvariantCulture, $" RNG r{r} {row.Upper - row.Lower:R}\n");
            }
        }

        text.Append("BOUNDS\n");
        for (var c = 0; c < problem.Columns.Count; c++)
        {
            var column = problem.Columns[c];
            if (column.Lower != 0)
            {
                text.Append(CultureInfo.InvariantCulture, $" LO BND c{c} {column.Lower:R}\n");
            }

            if (double.IsFinite(column.Upper))
            {
                text.Append(CultureInfo.InvariantCulture, $" UP BND c{c} {column.Upper:R}\n");
            }
        }

        File.WriteAllText(file, text.Append("ENDATA\n").ToString());
    }
}
