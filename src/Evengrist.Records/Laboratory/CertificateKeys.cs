using System.Security.Cryptography;
using System.Text.Json;
using Evengrist.Laboratory.Certificates;
using Evengrist.Ledger;

namespace Evengrist.Records.Laboratory;

/// <summary>The keys a mill signs its certificates with. A key is made when the first certificate is issued; its private part lies in the mill's own records and leaves them by no page.</summary>
public static class CertificateKeys
{
    private const string PaperKind = "certificate-key", Code = "key";

    /// <summary>The public keys, the newest last; empty before the first certificate.</summary>
    public static IReadOnlyList<CertificateKey> All(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(PaperKind).All().Select(paper =>
        {
            using var key = Read(paper);
            return CertificateKey.Of(key);
        })];
    }

    /// <summary>A certificate with the mill's signature of it.</summary>
    internal static AnalysisCertificate Sign(Mill mill, AnalysisCertificate certificate)
    {
        using var key = Read(Newest(mill, certificate.SignedBy));
        var value = key.SignData(CertificateKey.Signed(certificate), HashAlgorithmName.SHA256, DSASignatureFormat.Rfc3279DerSequence);
        return certificate with { Signature = new(CertificateKey.Of(key).Id, Convert.ToBase64String(value)) };
    }

    private static Paper Newest(Mill mill, string by)
    {
        var shelf = mill.Papers(PaperKind);
        if (shelf.Newest(Code) is null)
        {
            using var made = ECDsa.Create(ECCurve.NamedCurves.nistP256);
            try
            {
                shelf.Keep(Code, 1, JsonSerializer.Serialize(made.ExportPkcs8PrivateKeyPem()), by);
            }
            catch (LedgerRefusal taken) when (taken.Rule == LedgerRule.KeyTaken)
            {
                // Another program made one meanwhile: that one signs.
            }
        }

        return shelf.Newest(Code)!;
    }

    private static ECDsa Read(Paper paper)
    {
        var key = ECDsa.Create();
        key.ImportFromPem(JsonSerializer.Deserialize<string>(paper.Json));
        return key;
    }
}
