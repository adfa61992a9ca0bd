using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.Json;
using Evengrist.Quantities;

namespace Evengrist.Plant.Epcis.Sending;

/// <summary>What one sending told that the one it went to had not been told before, and which of what he had been told it declared wrong. Packed: an event takes some 40 bytes where many are told.</summary>
/// <param name="Told">Events told, a line each, packed by Brotli, in base 64.</param>
/// <param name="Declared">Declared wrong, a line each: number of the sending and of its line, and the identifiers of what stands in for it; packed likewise.</param>
public sealed record SentEvents(string Told, string Declared)
{
    private static readonly JsonSerializerOptions Options = StrictJson.Options();

    /// <summary>Reads what was kept.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out SentEvents? sent, out IReadOnlyList<string> faults) => StrictJson.TryRead(json, Options, s => s is null ? ["There is nothing."] : [], out sent, out faults);

    /// <summary>As it is kept.</summary>
    public string ToJson() => JsonSerializer.Serialize(this, Options);

    internal static SentEvents Of(IEnumerable<string> told, IEnumerable<WrongEvent> declared) =>
        new(Packed(told), Packed(declared.Select(d => string.Create(CultureInfo.InvariantCulture, $"{d.Sending} {d.Line} {string.Join(' ', d.CorrectedBy)}").TrimEnd())));

    internal IEnumerable<EventText> Lines() => Unpacked(Told).Select(l => new EventText(l));

    internal IEnumerable<(int Sending, int Line, IReadOnlyList<string> CorrectedBy)> DeclaredLines() => Unpacked(Declared).Select(l => l.Split(' '))
        .Select(l => (int.Parse(l[0], CultureInfo.InvariantCulture), int.Parse(l[1], CultureInfo.InvariantCulture), (IReadOnlyList<string>)l[2..]));

    private static string Packed(IEnumerable<string> lines)
    {
        using var bytes = new MemoryStream();
        using (var packing = new StreamWriter(new BrotliStream(bytes, CompressionLevel.Optimal), new UTF8Encoding(false)) { NewLine = "\n" })
        {
            foreach (var line in lines)
            {
                packing.WriteLine(line);
            }
        }

        return Convert.ToBase64String(bytes.ToArray());
    }

    private static IEnumerable<string> Unpacked(string packed)
    {
        using var reader = new StreamReader(new BrotliStream(new MemoryStream(Convert.FromBase64String(packed)), CompressionMode.Decompress), Encoding.UTF8);
        while (reader.ReadLine() is { } line)
        {
            yield return line;
        }
    }
}
