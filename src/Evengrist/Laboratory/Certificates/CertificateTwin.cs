using System.Diagnostics.CodeAnalysis;
using System.Security.Cryptography;
using System.Text;

namespace Evengrist.Laboratory.Certificates;

/// <summary>A certificate as JSON that a program reads, and the code that tells whether one was altered.</summary>
/// <remarks>The canonical form is UTF-8 without blanks, members in the order of the record; the signature left out; the code is SHA-256 (FIPS 180-4) over it, so that blanks and the order of members do not matter and every digit does.</remarks>
public static class CertificateTwin
{
    private const int ShortBytes = 10;

    /// <summary>The canonical JSON, without the signature: what the code and the signature are of.</summary>
    public static string Canonical(AnalysisCertificate certificate)
    {
        ArgumentNullException.ThrowIfNull(certificate);
        return LabJson.WriteShort(certificate with { Signature = null });
    }

    /// <summary>The JSON as it is kept: canonical, with the signature.</summary>
    public static string Kept(AnalysisCertificate certificate) => LabJson.WriteShort(certificate);

    /// <summary>The JSON as it is handed out.</summary>
    public static string Write(AnalysisCertificate certificate) => LabJson.Write(certificate);

    /// <summary>The whole code: 64 hexadecimal digits.</summary>
    public static string Code(AnalysisCertificate certificate) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(Canonical(certificate))));

    /// <summary>The code as it is printed: its first 80 bits in five groups.</summary>
    public static string ShortCode(AnalysisCertificate certificate) => string.Join('-', Code(certificate)[..(2 * ShortBytes)].ToUpperInvariant().Chunk(4).Select(c => new string(c)));

    /// <summary>A code as typed without blanks and dashes, in small letters; null where it is no code of at least the printed length.</summary>
    public static string? Typed(string? text)
    {
        var digits = new string([.. (text ?? "").Where(c => !char.IsWhiteSpace(c) && c != '-')]).ToLowerInvariant();
        return digits.Length is >= 2 * ShortBytes and <= 64 && digits.All(char.IsAsciiHexDigit) ? digits : null;
    }

    /// <summary>Reads a twin; each fault a sentence.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out AnalysisCertificate? certificate, out IReadOnlyList<string> faults) =>
        LabJson.TryRead(json, read => read.Format != AnalysisCertificate.OurFormat ? [$"The format is {AnalysisCertificate.OurFormat}; read “{read.Format}”."] : [], out certificate, out faults, "A certificate is an object; read null.");
}
