using Evengrist.Laboratory.Certificates;

namespace Evengrist.Plant.Answers;

/// <summary>A certificate that was issued.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Version">Its version.</param>
/// <param name="Lot">The lot.</param>
/// <param name="Customer">The customer; empty for none in particular.</param>
/// <param name="SignedBy">Who signed.</param>
/// <param name="IssuedAt">When.</param>
/// <param name="ShortCode">The code as printed.</param>
/// <param name="Code">SHA-256 over the canonical twin.</param>
/// <param name="Key">Id of the mill's key that signed it; null for none.</param>
public sealed record CertificateAnswer(string Number, int Version, string Lot, string Customer, string SignedBy, DateTimeOffset IssuedAt, string ShortCode, string Code, string? Key)
{
    /// <summary>A certificate.</summary>
    public static CertificateAnswer Of(AnalysisCertificate certificate)
    {
        ArgumentNullException.ThrowIfNull(certificate);
        return new(certificate.Number, certificate.Version, certificate.Lot, certificate.Customer, certificate.SignedBy, certificate.IssuedAt.ToDateTimeOffset(), CertificateTwin.ShortCode(certificate), CertificateTwin.Code(certificate), certificate.Signature?.Key);
    }
}

/// <summary>Whether a code or a twin is of a certificate that was issued.</summary>
/// <param name="Verdict">issued, superseded or notIssued.</param>
/// <param name="Number">Its number; null where none was issued.</param>
/// <param name="Version">Its version.</param>
/// <param name="Words">In words.</param>
public sealed record CertificateCheckAnswer(string Verdict, string? Number, int? Version, string Words)
{
    /// <summary>An answer.</summary>
    public static CertificateCheckAnswer Of(CertificateCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        var found = (check as CertificateCheck.Issued)?.Certificate ?? (check as CertificateCheck.Superseded)?.Certificate;
        return new(check switch { CertificateCheck.Issued => "issued", CertificateCheck.Superseded => "superseded", _ => "notIssued" }, found?.Number, found?.Version, check.Words);
    }
}
