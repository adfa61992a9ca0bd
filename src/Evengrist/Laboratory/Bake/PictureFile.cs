using System.Buffers.Binary;

namespace Evengrist.Laboratory.Bake;

/// <summary>What kind of picture bytes are, by what they begin with: a name or a declared type is not believed.</summary>
public static class PictureFile
{
    /// <summary>Largest picture that is kept, MiB [ours].</summary>
    public const int MostMebibytes = 5;

    /// <summary>The same in bytes.</summary>
    public const int MostBytes = MostMebibytes * 1024 * 1024;

    // A header and one block: nothing shorter is a picture.
    private const int LeastBytes = 32;

    /// <summary>The media type of a JPEG, PNG or WebP by its first bytes (ISO/IEC 10918-1 SOI; PNG 1.2 signature; RIFF container of WebP) and, where the format has one, its end; null for anything else.</summary>
    public static string? TypeOf(ReadOnlySpan<byte> bytes) =>
        bytes.Length < LeastBytes ? null
        : bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF]) && bytes.LastIndexOf((ReadOnlySpan<byte>)[0xFF, 0xD9]) > 0 ? "image/jpeg"
        : bytes.StartsWith((ReadOnlySpan<byte>)[0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A]) && bytes.LastIndexOf("IEND"u8) > 0 ? "image/png"
        : bytes.StartsWith("RIFF"u8) && bytes[8..].StartsWith("WEBP"u8) && BinaryPrimitives.ReadUInt32LittleEndian(bytes[4..8]) + 8L <= bytes.Length ? "image/webp"
        : null;

    /// <summary>What is wrong with a picture, in a sentence; null where it can be kept.</summary>
    public static string? Fault(ReadOnlySpan<byte> bytes) =>
        bytes.Length == 0 ? "No picture was sent: choose a file."
        : bytes.Length > MostBytes ? FormattableString.Invariant($"The picture has {bytes.Length / 1048576.0:0.0} MiB; at most {MostMebibytes} MiB are kept. Save it smaller, 2000 pixels wide is plenty.")
        : TypeOf(bytes) is null ? "That is no whole JPEG, PNG or WebP picture, whatever its name says: save it as JPEG and send that."
        : null;
}
