using Evengrist.Laboratory.Certificates;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Laboratory;

/// <summary>Certificates of analysis that were issued: papers by number and version, nothing lost.</summary>
public static class IssuedCertificates
{
    /// <summary>Every version of every certificate, by number and version.</summary>
    public static IReadOnlyList<AnalysisCertificate> All(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(AnalysisCertificate.Kind).All().Read<AnalysisCertificate>(CertificateTwin.TryRead).Select(p => p.Value)];
    }

    /// <summary>One certificate; null where none is kept.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="number">Its number.</param>
    /// <param name="version">Its version; null for the newest.</param>
    public static AnalysisCertificate? Find(Mill mill, string number, int? version = null) =>
        All(mill).LastOrDefault(c => c.Number.Equals(number.Trim(), StringComparison.OrdinalIgnoreCase) && (version is null || c.Version == version));

    /// <summary>Whether a code is of a certificate that was issued.</summary>
    public static CertificateCheck Check(Mill mill, string? code) => CertificateCheck.Of(All(mill), CertificateKeys.All(mill), code);

    /// <summary>Whether a twin is a certificate that was issued.</summary>
    public static CertificateCheck Check(Mill mill, AnalysisCertificate twin) => CertificateCheck.Of(All(mill), CertificateKeys.All(mill), twin);

    /// <summary>What would be issued of a lot, or why nothing would; keeps nothing.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="lot">Code of the lot.</param>
    /// <param name="specification">Code of the specification; the mill's own where empty.</param>
    /// <param name="by">Who signs.</param>
    /// <param name="at">When.</param>
    public static (AnalysisCertificate? Certificate, IReadOnlyList<string> Refused) Draft(Mill mill, string lot, string specification, string by, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var (seen, rules, settings) = (LotShelf.Find(mill, lot, at, specification), KeepReleaseRules.Newest(mill).Rules, mill.Settings);
        if (seen is null)
        {
            return (null, [$"There is no lot {lot} with a package by then."]);
        }

        if (seen.Judged is not { } judged || (specification.Trim().Length > 0 && !judged.Specification.Code.Equals(specification.Trim(), StringComparison.OrdinalIgnoreCase)))
        {
            return (null, [$"No specification {specification} of this flour holds on that day: {(seen.Specifications.Count == 0 ? "keep one first" : $"there are {string.Join(", ", seen.Specifications.Select(s => s.Specification.Code))}")}."]);
        }

        var spec = new CertificateSpec(seen.Lot, seen.Decision, seen.Packages, judged.Specification, judged.Title, seen.Results, rules.LagMinutes) { Mill = settings.Name, IsInvented = settings.IsDemonstration, SignedBy = by.Trim(), IssuedAt = at };
        var (certificate, refused) = CertificateModel.Of(spec with { Version = 1 + (Find(mill, spec.Number)?.Version ?? 0) });
        return !string.IsNullOrWhiteSpace(by) && !rules.MayDecide(by) ? (null, [.. refused, rules.Refusal(by, "sign")]) : (certificate, refused);
    }

    /// <summary>Issues a certificate of a lot as the next version of its number; every reason where none is made, and then nothing is kept.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="lot">Code of the lot.</param>
    /// <param name="specification">Code of the specification; the mill's own where empty.</param>
    /// <param name="by">Who signs.</param>
    /// <param name="at">When.</param>
    public static (AnalysisCertificate? Certificate, IReadOnlyList<string> Refused) Issue(Mill mill, string lot, string specification, string by, Instant at)
    {
        var (certificate, refused) = Draft(mill, lot, specification, by, at);
        if (certificate is null)
        {
            return (null, refused);
        }

        try
        {
            var signed = CertificateKeys.Sign(mill, certificate);
            mill.Papers(AnalysisCertificate.Kind).Keep(signed.Number, signed.Version, CertificateTwin.Kept(signed), signed.SignedBy);
            return (signed, []);
        }
        catch (LedgerRefusal taken) when (taken.Rule == LedgerRule.KeyTaken)
        {
            return (null, [$"{certificate.Number} was issued meanwhile by another: look at that one first."]);
        }
    }
}
