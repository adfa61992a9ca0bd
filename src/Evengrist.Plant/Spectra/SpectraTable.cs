using System.Globalization;
using System.Text;
using Evengrist.Laboratory.Calibration;
using Evengrist.Plant.Imports;

namespace Evengrist.Plant.Spectra;

/// <summary>Spectra of one axis read from a file: CSV or a workbook with a row for each spectrum, or JCAMP-DX with a block for each.</summary>
/// <param name="Axis">Where their channels lie.</param>
/// <param name="Rows">In the order of the file.</param>
/// <param name="Mark">What parts whole and tenths in other columns.</param>
public sealed record SpectraTable(SpectralAxis Axis, IReadOnlyList<SpectrumRow> Rows, DecimalMark Mark = DecimalMark.Point)
{
    /// <summary>Largest file, bytes [ours].</summary>
    public const int MostBytes = 20 * 1024 * 1024;

    internal const int MostFaults = 50;

    /// <summary>Reads a file; which sort it is, its first characters say.</summary>
    public static Parsed<SpectraTable> Read(Stream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        if (Cases.PosedBytes.Of(stream, MostBytes) is not { } bytes)
        {
            return Parsing.Failed<SpectraTable>(Fault.OfFile("a larger file", $"at most {MostBytes / (1024 * 1024)} MiB; split the file"));
        }

        var read = IsJcamp(bytes.Span) ? Jcamp.Read(Encoding.UTF8.GetString(bytes.Span)) : SpectraCsv.Read(bytes);
        return read.Then(table => table.Axis.Faults() is { Count: > 0 } faults ? Parsing.Failed<SpectraTable>([.. faults.Select(f => Fault.Told("", f))]) : read);
    }

    /// <summary>The same of text that is in hand.</summary>
    public static Parsed<SpectraTable> Read(string text)
    {
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(text));
        return Read(stream);
    }

    /// <summary>Names of what is written beside the spectra.</summary>
    public IReadOnlyList<string> Columns => [.. Rows.SelectMany(r => r.Columns.Keys).Distinct(StringComparer.OrdinalIgnoreCase)];

    /// <summary>Channels from one place to another alone, the ends included.</summary>
    public Parsed<SpectraTable> Between(double? from, double? to)
    {
        int[] kept = [.. Enumerable.Range(0, Axis.Count).Where(i => !(Axis.Positions[i] < from) && !(Axis.Positions[i] > to))];
        return kept.Length == Axis.Count ? Parsing.Got(this)
            : kept.Length < 2 ? Parsing.Failed<SpectraTable>(Fault.Told("$.from", string.Create(CultureInfo.InvariantCulture, $"From {from} to {to} lie fewer than 2 channels: they reach from {Axis.Positions.Min()} to {Axis.Positions.Max()} {Axis.Unit}.")))
            : Parsing.Got(this with { Axis = new([.. kept.Select(i => Axis.Positions[i])], Axis.Unit), Rows = [.. Rows.Select(r => r with { Values = [.. kept.Select(i => r.Values[i])] })] });
    }

    private static bool IsJcamp(ReadOnlySpan<byte> bytes) => bytes.TrimStart(" \t\r\n"u8).StartsWith("##"u8);
}
