using Evengrist.Laboratory.Rings;

namespace Evengrist.Plant.Cases;

/// <summary>Mills' figures and ring results read from CSV text: all of it, or every fault with line and column.</summary>
public static class MillsTables
{
    /// <summary>The columns of the mills' figures, one row for each mill.</summary>
    public static IReadOnlyList<FileColumn> MillColumns { get; } =
    [
        new("mill", "", true, "the mill, once"), new("laboratory", "", true, "who read its flour, as in the ring results"), new("mean", "", true, "mean of its results"),
        new("deviation", "", true, "one standard deviation of them, above 0"), new("count", "", true, $"how many, 2 or more; about {Laboratory.Charts.Capability.UsualCount} are asked for"),
    ];

    /// <summary>The columns of ring results, one row for each result.</summary>
    public static IReadOnlyList<FileColumn> RingColumns { get; } =
    [
        new("laboratory", "", true, "who read it"), new("sample", "", true, "of which flour: several laboratories read the same"), new("value", "", true, "what was read; duplicates are rows of their own"),
    ];

    /// <summary>An example of three mills. M03 and M07: the acceptance case of this page; the third mill and the counts are invented.</summary>
    public const string MillsExample =
        """
        mill;laboratory;mean;deviation;count
        M01;L1;11.90;0.06;60
        M03;L3;11.95;0.09;60
        M07;L7;11.78;0.07;60
        """;

    /// <summary>An example of a ring test: four flours, two results of each laboratory; invented.</summary>
    public const string RingExample =
        """
        laboratory;sample;value
        brand;f1;11.80
        brand;f1;11.82
        L3;f1;11.81
        L3;f1;11.79
        L7;f1;11.68
        L7;f1;11.71
        brand;f2;11.91
        brand;f2;11.89
        L3;f2;11.92
        L3;f2;11.90
        L7;f2;11.79
        L7;f2;11.77
        brand;f3;12.00
        brand;f3;12.02
        L3;f3;12.00
        L3;f3;12.03
        L7;f3;11.89
        L7;f3;11.87
        brand;f4;12.11
        brand;f4;12.09
        L3;f4;12.10
        L3;f4;12.12
        L7;f4;11.97
        L7;f4;11.99
        """;

    /// <summary>Reads the mills' figures.</summary>
    public static Parsed<IReadOnlyList<MillFigures>> Mills(string text)
    {
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        return CsvRows.Of(text, MillColumns, "one for each mill", line =>
        {
            Named(line, "mill", "laboratory");
            if (line["mill"].Length > 0 && !seen.TryAdd(line["mill"], line.Line))
            {
                line.Fault("mill", FormattableString.Invariant($"each mill once; it stands in line {seen[line["mill"]]} too"));
            }

            var (mean, deviation, count) = (line.Needed("mean"), line.Needed("deviation"), line.Needed("count"));
            if (line["deviation"].Length > 0 && line.Number("deviation") <= 0)
            {
                line.Fault("deviation", "a standard deviation above 0");
            }

            if (line["count"].Length > 0 && line.Number("count") is { } n && (n < 2 || n > int.MaxValue || n != Math.Floor(n)))
            {
                line.Fault("count", "a whole number of results, 2 or more");
            }

            return new MillFigures(line["mill"], line["laboratory"], mean, deviation, (int)Math.Clamp(count, 0, int.MaxValue));
        });
    }

    /// <summary>Reads ring results.</summary>
    public static Parsed<IReadOnlyList<RingResult>> Ring(string text) => CsvRows.Of(text, RingColumns, "one for each result", line =>
    {
        Named(line, "laboratory", "sample");
        return new RingResult(line["laboratory"], line["sample"], line.Needed("value"));
    });

    private static void Named(FileLine line, params string[] headings)
    {
        foreach (var heading in headings.Where(h => line[h].Length == 0))
        {
            line.Fault(heading, "a name");
        }
    }
}
