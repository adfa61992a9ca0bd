using System.Security.Cryptography;
using System.Text;

namespace Evengrist.Laboratory.Certificates;

/// <summary>A mill's public key, by which anyone tells whether a certificate's twin was signed by that mill: ECDSA on P-256 with SHA-256 (FIPS 186-4).</summary>
/// <param name="Id">First 16 hexadecimal digits of SHA-256 over the key's SubjectPublicKeyInfo.</param>
/// <param name="Pem">The public key, PEM.</param>
public sealed record CertificateKey(string Id, string Pem)
{
    private const int IdDigits = 16;

    /// <summary>The public part of a key.</summary>
    public static CertificateKey Of(ECDsa key)
    {
        ArgumentNullException.ThrowIfNull(key);
        return new(Convert.ToHexStringLower(SHA256.HashData(key.ExportSubjectPublicKeyInfo()))[..IdDigits], key.ExportSubjectPublicKeyInfoPem());
    }

    /// <summary>What is signed: the canonical twin, UTF-8.</summary>
    public static byte[] Signed(AnalysisCertificate certificate) => Encoding.UTF8.GetBytes(CertificateTwin.Canonical(certificate));

    /// <summary>Whether a certificate's signature is of this key and of what it says.</summary>
    public bool Verifies(AnalysisCertificate certificate)
    {
        ArgumentNullException.ThrowIfNull(certificate);
        if (certificate.Signature is not { } signature || signature.Key != Id)
        {
            return false;
        }

        using var key = ECDsa.Create();
        key.ImportFromPem(Pem);
        var value = new byte[signature.Value.Length];
        return Convert.TryFromBase64String(signature.Value, value, out var length) && key.VerifyData(Signed(certificate), value.AsSpan(0, length), HashAlgorithmName.SHA256, DSASignatureFormat.Rfc3279DerSequence);
    }
}

/// <summary>A mill's signature of a certificate.</summary>
/// <param name="Key">Id of the key.</param>
/// <param name="Value">ECDSA P-256 over SHA-256 of the canonical twin, DER (RFC 3279), base64.</param>
public sealed record CertificateSignature(string Key, string Value);
