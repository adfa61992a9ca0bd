namespace Evengrist.Laboratory.Certificates;

/// <summary>Whether a code or a twin is of a certificate that was issued.</summary>
public abstract record CertificateCheck
{
    private CertificateCheck()
    {
    }

    /// <summary>It was issued, and stands.</summary>
    /// <param name="Certificate">The certificate.</param>
    /// <param name="Signed">What its signature says, in a sentence.</param>
    public sealed record Issued(AnalysisCertificate Certificate, string Signed) : CertificateCheck;

    /// <summary>It was issued, and a later version stands in its place.</summary>
    /// <param name="Certificate">The certificate.</param>
    /// <param name="Newest">The version that stands.</param>
    /// <param name="Signed">What its signature says, in a sentence.</param>
    public sealed record Superseded(AnalysisCertificate Certificate, int Newest, string Signed) : CertificateCheck;

    /// <summary>No certificate of this mill has that code, or says that.</summary>
    /// <param name="Why">What is wrong and what to do.</param>
    public sealed record NotIssued(string Why) : CertificateCheck;

    /// <summary>The answer in words.</summary>
    public string Words => this switch
    {
        Issued i => $"Issued: {i.Certificate.Number}, version {i.Certificate.Version}, signed by {i.Certificate.SignedBy}. {i.Signed}",
        Superseded s => $"Issued as {s.Certificate.Number}, version {s.Certificate.Version}, and superseded: version {s.Newest} stands. {s.Signed}",
        NotIssued n => $"Not issued by this mill. {n.Why}",
        _ => "",
    };

    /// <summary>Looks a code up among certificates.</summary>
    /// <param name="all">All versions of all certificates.</param>
    /// <param name="keys">The mill's public keys.</param>
    /// <param name="code">The code as typed, printed or whole.</param>
    public static CertificateCheck Of(IReadOnlyList<AnalysisCertificate> all, IReadOnlyList<CertificateKey> keys, string? code)
    {
        ArgumentNullException.ThrowIfNull(all);
        return CertificateTwin.Typed(code) is not { } digits ? new NotIssued("A code is 20 to 64 hexadecimal digits, as printed in five groups of four.")
            : Found(all, keys, all.FirstOrDefault(c => CertificateTwin.Code(c).StartsWith(digits, StringComparison.Ordinal)), "No certificate has this code: look for a typing error, or ask the mill.");
    }

    /// <summary>Holds a twin against the certificate of its number and version.</summary>
    public static CertificateCheck Of(IReadOnlyList<AnalysisCertificate> all, IReadOnlyList<CertificateKey> keys, AnalysisCertificate twin)
    {
        ArgumentNullException.ThrowIfNull(all);
        ArgumentNullException.ThrowIfNull(twin);
        var kept = all.FirstOrDefault(c => c.Number == twin.Number && c.Version == twin.Version);
        return kept is null ? new NotIssued($"There is no {twin.Number} in version {twin.Version}.")
            : twin.Signature is not null && twin.Signature != kept.Signature ? new NotIssued($"{twin.Number} version {twin.Version} was issued with another signature: this text was altered.")
            : Found(all, keys, CertificateTwin.Code(kept) == CertificateTwin.Code(twin) ? kept : null, $"{twin.Number} version {twin.Version} was issued and says something else: this text was altered.");
    }

    private static CertificateCheck Found(IReadOnlyList<AnalysisCertificate> all, IReadOnlyList<CertificateKey> keys, AnalysisCertificate? found, string otherwise)
    {
        if (found is null)
        {
            return new NotIssued(otherwise);
        }

        var newest = all.Where(c => c.Number == found.Number).Max(c => c.Version);
        return found.Signature is not null && !keys.Any(k => k.Verifies(found)) ? new NotIssued($"{found.Number} version {found.Version} is kept, and its signature does not hold by any key of this mill: do not rely on it, ask the mill.")
            : newest > found.Version ? new Superseded(found, newest, SignedWords(found)) : new Issued(found, SignedWords(found));
    }

    private static string SignedWords(AnalysisCertificate found) => found.Signature is { } signature ? $"Signed by this mill's key {signature.Key}." : "It carries no signature: it was issued before this mill had a key.";
}
