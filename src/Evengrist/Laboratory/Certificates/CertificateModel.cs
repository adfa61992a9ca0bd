using System.Globalization;
using Evengrist.Laboratory.Lots;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Laboratory.Certificates;

/// <summary>Makes a certificate of a released lot, or says why there is none. Model: docs/model/certificates.md.</summary>
public static class CertificateModel
{
    /// <summary>The certificate, or every reason against it, each a sentence that says what to do.</summary>
    public static (AnalysisCertificate? Certificate, IReadOnlyList<string> Refused) Of(CertificateSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (Refused(spec) is { Count: > 0 } refused)
        {
            return (null, refused);
        }

        var measured = spec.Results.Where(r => r.Reported is not null).ToArray();
        var delivered = spec.Packages.Where(p => p.GoneTo is { } to && spec.Specification.Customer.Length > 0 && to.Name.Equals(spec.Specification.Customer, StringComparison.OrdinalIgnoreCase)).ToArray();
        return (new AnalysisCertificate(
            AnalysisCertificate.OurFormat, spec.Number, spec.Version, spec.Mill, spec.IsInvented,
            spec.Specification.Name.Length > 0 ? $"{spec.Specification.Flour}, {spec.Specification.Name}" : spec.Specification.Flour, spec.Lot.Code, spec.Specification.Customer, spec.Specification.Market, spec.Title,
            spec.Lot.Packages.Min(p => p.PackedAt), spec.Lot.Packages.Max(p => p.PackedAt),
            new CertifiedQuantity(spec.Lot.Mass.Tonnes, spec.Lot.Packages.Count, delivered.Sum(d => d.Gone.Tonnes), delivered.Length),
            [.. measured.Select(Line)], Sampling(spec, measured), [.. Statements(spec)], spec.SignedBy, spec.IssuedAt), []);
    }

    private static IReadOnlyList<string> Refused(CertificateSpec spec) =>
    [
        .. spec.Decision is { IsReleased: true } ? Array.Empty<string>() : [$"{spec.Lot.Code} is not released: a certificate is made once a named person has released it."],
        .. spec.Packages.Count(p => p.IsHere && p.Hold is not null) is > 0 and var held ? [$"{held} packages of {spec.Lot.Code} are on hold: release them first."] : Array.Empty<string>(),
        .. spec.Decision is { As.Length: > 0 } down && !down.As.Equals(spec.Specification.Flour, StringComparison.OrdinalIgnoreCase) ? [$"{spec.Lot.Code} was released as {down.As}: take a specification of {down.As}."] : Array.Empty<string>(),
        .. spec.Results.Where(r => r.Item.Required && r.Reported is null).Select(r => $"{r.Item.Title} is asked for and has no result: {r.WhyNot}"),
        .. spec.Results.Where(r => r.Reported is not null && string.IsNullOrWhiteSpace(r.Method)).Select(r => $"The result of {r.Item.What.Words()} names no method: put the reading right."),
        .. spec.Results.Where(r => r.Reported is not null && r.Item.What.NeedsBasis() && !r.Item.Basis.IsStated).Select(r => $"The result of {r.Item.What.Words()} has no moisture basis: give the specification one."),
        .. spec.Results.All(r => r.Reported is null) ? ["Nothing was measured of it."] : Array.Empty<string>(),
        .. string.IsNullOrWhiteSpace(spec.SignedBy) ? ["Say who signs it."] : Array.Empty<string>(),
    ];

    private static CertificateLine Line(LotResult result)
    {
        var (item, decimals) = (result.Item, DecimalsOf(result));
        var reported = Recorded.To(result.Reported!.Value, decimals);
        return new CertificateLine(
            item.What.ToString(), item.What.Words(), reported, item.Unit, UnitCodes.Of(item.Unit), item.Basis.IsStated ? item.Basis.ToString() : "as is", result.Method, result.Instrument, result.Values.Count,
            !(reported < item.Lower) && !(reported > item.Upper), item.DecisionWords, result.Outcome is { } outcome ? Recorded.To((decimal)(2 * outcome.Uncertainty), decimals + 1) : null, item.Lower, item.Upper);
    }

    // As many decimals as the readings or the limits have, whichever is more: rounding hides nothing that a limit sees.
    private static int DecimalsOf(LotResult result) =>
        Math.Min(6, new[] { result.Item.Lower, result.Item.Upper }.OfType<decimal>().Select(v => (int)v.Scale).Concat(result.Readings.Select(r => (int)r.Value.Scale)).Max());

    private static string Sampling(CertificateSpec spec, IReadOnlyList<LotResult> measured)
    {
        var readings = measured.SelectMany(m => m.Readings).ToArray();
        var samples = readings.Select(r => (r.On, r.At)).Distinct().Count();
        var onPackages = readings.Where(r => spec.Lot.Packages.Any(p => p.Place.Id == r.On)).Select(r => (r.On, r.At)).Distinct().Count();
        return string.Create(CultureInfo.InvariantCulture,
            $"{samples} samples of this lot: {onPackages} of its packages, {samples - onPackages} of the flour on its way to them{(samples > onPackages ? $", taken {spec.LagMinutes} minutes before packing by the mill's own figure" : "")}. A result stands for the samples that were taken.");
    }

    private static IEnumerable<string> Statements(CertificateSpec spec)
    {
        yield return "Every result was measured on this lot. No typical, assumed or carried-over value stands on this certificate.";
        if (spec.Results.Where(r => r.Reported is null).Select(r => r.Item.What.Words()).ToArray() is { Length: > 0 } untested)
        {
            yield return $"Not tested on this lot: {string.Join(", ", untested)}.";
        }

        if (spec.Decision is { } decision)
        {
            yield return $"Released{(decision.As.Length > 0 ? $" as {decision.As}" : "")} by {decision.By}{(decision.Reason.Length > 0 ? $": {decision.Reason}" : "")}.";
        }

        foreach (var adjusted in spec.Results.Where(r => r.ReportedAsRead is not null))
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"{adjusted.Item.Title}: read {adjusted.ReportedAsRead:0.####} by {adjusted.Instrument}, adjusted by the laboratory's setting of it.");
        }

        if (spec.Results.Where(r => r.Reported is not null).Any(r => r.Item.What is Property.Don or Property.Aflatoxin or Property.OchratoxinA or Property.Zearalenone or Property.T2AndHt2))
        {
            yield return "A toxin found below its limit does not make the lot free of it: the result stands for the samples that were taken.";
        }

        yield return "± is the expanded uncertainty (k = 2) of the result as the lot's mean.";
        yield return "Raw flour: it is not ready to eat, and no result here makes it so.";
    }
}
