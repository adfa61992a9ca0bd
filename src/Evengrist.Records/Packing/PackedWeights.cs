using System.IO.Compression;
using System.Text.Json;
using Evengrist.Packing.NetContent;
using NodaTime;

namespace Evengrist.Records.Packing;

/// <summary>
/// The packages of an hour as they are kept: differences of moment, weight and tare, packed and written as text. Some 3 to 5 bytes a package, and every weight is there again to the tenth of a gram.
/// </summary>
/// <param name="Line">Code of the line.</param>
/// <param name="Product">Code of the product.</param>
/// <param name="From">When the hour begins.</param>
/// <param name="Count">Packages.</param>
/// <param name="Packed">The packages, packed (base 64).</param>
/// <param name="Asked">What was asked about the file they came in, and what was answered; null where nothing was.</param>
internal sealed record PackedWeights(string Line, string Product, Instant From, int Count, string Packed, string? Asked = null)
{
    private static readonly JsonSerializerOptions Options = Evengrist.Quantities.StrictJson.Options();

    public static string Write(WeighedHour hour, string asked = "")
    {
        using var bytes = new MemoryStream();
        using (var packer = new DeflateStream(bytes, CompressionLevel.Optimal, leaveOpen: true))
        using (var writer = new BinaryWriter(packer))
        {
            var before = new WeighedPackage(hour.From, 0, 0, false);
            foreach (var package in hour.Packages.Order())
            {
                writer.Write7BitEncodedInt64(((package.At - before.At).ToInt64Nanoseconds() / 1_000_000 * 2) + (package.IsRejected ? 1 : 0));
                writer.Write7BitEncodedInt(Folded(package.GrossTenths - before.GrossTenths));
                writer.Write7BitEncodedInt(Folded(package.TareTenths - before.TareTenths));
                before = package;
            }
        }

        return JsonSerializer.Serialize(new PackedWeights(hour.Line, hour.Product, hour.From, hour.Packages.Count, Convert.ToBase64String(bytes.ToArray()), asked.Length > 0 ? asked : null), Options);
    }

    public static WeighedHour Read(string json)
    {
        var kept = JsonSerializer.Deserialize<PackedWeights>(json, Options)!;
        using var unpacker = new DeflateStream(new MemoryStream(Convert.FromBase64String(kept.Packed)), CompressionMode.Decompress);
        using var reader = new BinaryReader(unpacker);
        var (packages, before) = (new WeighedPackage[kept.Count], new WeighedPackage(kept.From, 0, 0, false));
        for (var i = 0; i < packages.Length; i++)
        {
            var moment = reader.Read7BitEncodedInt64();
            packages[i] = before = new(before.At + Duration.FromMilliseconds(moment / 2), before.GrossTenths + Unfolded(reader.Read7BitEncodedInt()), before.TareTenths + Unfolded(reader.Read7BitEncodedInt()), moment % 2 == 1);
        }

        return new(kept.Line, kept.Product, kept.From, packages);
    }

    // Small numbers of either sign become small numbers.
    private static int Folded(int n) => (n << 1) ^ (n >> 31);

    private static int Unfolded(int n) => (int)((uint)n >> 1) ^ -(n & 1);
}
