using Evengrist.Packing.NetContent;
using Evengrist.Packing.Products;
using Evengrist.Plant.Tables;
using NodaTime;

namespace Evengrist.Plant.Cases;

/// <summary>A checkweigher's file, read row by row into hours: a million rows take some 20 bytes of memory each beside the file itself.</summary>
/// <param name="Hours">What was weighed, by line, product and hour.</param>
/// <param name="Rows">Packages read.</param>
/// <param name="Questions">What is odd, each with the first line it is seen on.</param>
public sealed record WeighingFile(IReadOnlyList<WeighedHour> Hours, int Rows, IReadOnlyList<(int Line, string Words)> Questions)
{
    /// <summary>How large a file may be.</summary>
    public static Limits Most { get; } = new() { Bytes = 96 * 1024 * 1024, UnpackedBytes = 600L * 1024 * 1024, Rows = 1_000_000, Columns = 24 };

    /// <summary>Reads a file: all of it, or every fault with line and column.</summary>
    /// <param name="stream">The file, CSV text or a workbook.</param>
    /// <param name="spec">What it is read against.</param>
    public static Parsed<WeighingFile> Read(Stream stream, WeighingSpec spec)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(spec);
        return TableReader.Read(stream, null, Most, (rows, _, faults) =>
        {
            var reader = new WeighingRows(spec, faults);
            Table.Each(rows, Most, faults, reader.Begin);
            return faults.Count > 0 ? Parsing.Failed<WeighingFile>(faults)
                : reader.Count == 0 ? Parsing.Failed<WeighingFile>(Fault.OfFile("a heading alone", "rows below it, one for each package"))
                : Parsing.Got(reader.Close());
        });
    }
}

/// <summary>What a checkweigher's file is read against.</summary>
/// <param name="Zone">Zone of times without an offset.</param>
/// <param name="Now">No package was weighed after it.</param>
/// <param name="Products">The mill's products.</param>
/// <param name="Lines">Codes of its packing lines.</param>
public sealed record WeighingSpec(DateTimeZone Zone, Instant Now, IReadOnlyList<Product> Products, IReadOnlyList<string> Lines)
{
    /// <summary>Our heading, with its unit, by the file's own word for it.</summary>
    public IReadOnlyDictionary<string, string> Called { get; init; } = new Dictionary<string, string>();

    /// <summary>Reads what a file's own headings mean, a line for each: <c>Gewicht = gross [kg]</c>.</summary>
    /// <param name="text">The lines; parted by line ends or semicolons.</param>
    public static (IReadOnlyDictionary<string, string> Called, string? Fault) ReadCalled(string? text)
    {
        var called = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var line in (text ?? "").Split(['\n', ';'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var sides = line.Split('=', 2, StringSplitOptions.TrimEntries);
            if (sides.Length < 2 || sides[0].Length == 0 || sides[1].Length == 0)
            {
                return (called, $"“{line}” does not say which heading is meant: write the file's word, = and ours, such as Gewicht = gross [kg].");
            }

            called[sides[0]] = sides[1];
        }

        return (called, null);
    }
}
