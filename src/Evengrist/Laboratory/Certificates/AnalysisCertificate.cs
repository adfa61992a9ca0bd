using NodaTime;

namespace Evengrist.Laboratory.Certificates;

/// <summary>A certificate of analysis: what was measured of a lot, against what a customer and a market ask. Nothing typical, assumed or carried over stands on it. Model: docs/model/certificates.md.</summary>
/// <param name="Format">What this is and how it is read: <see cref="OurFormat"/>.</param>
/// <param name="Number">Its number: lot and specification.</param>
/// <param name="Version">From 1; a reissue is the next.</param>
/// <param name="Mill">The mill.</param>
/// <param name="IsInvented">Whether the mill and all its figures are invented.</param>
/// <param name="Product">The flour it is sold as: code and name.</param>
/// <param name="Lot">Code of the lot.</param>
/// <param name="Customer">The customer; empty for none in particular.</param>
/// <param name="Market">The market; empty for none in particular.</param>
/// <param name="Specification">Code and version of what it is held against.</param>
/// <param name="PackedFrom">When its first package was packed.</param>
/// <param name="PackedUntil">When its last was.</param>
/// <param name="Quantity">How much.</param>
/// <param name="Lines">What was measured.</param>
/// <param name="Sampling">How samples were taken, in a sentence.</param>
/// <param name="Statements">What else is stated, each a sentence.</param>
/// <param name="SignedBy">The named person who issued it.</param>
/// <param name="IssuedAt">When.</param>
/// <param name="Signature">The mill's signature of all the rest; null on one that was issued before the mill had a key.</param>
public sealed record AnalysisCertificate(
    string Format, string Number, int Version, string Mill, bool IsInvented, string Product, string Lot, string Customer, string Market, string Specification, Instant PackedFrom, Instant PackedUntil, CertifiedQuantity Quantity,
    IReadOnlyList<CertificateLine> Lines, string Sampling, IReadOnlyList<string> Statements, string SignedBy, Instant IssuedAt, CertificateSignature? Signature = null)
{
    /// <summary>The kind of its papers.</summary>
    public const string Kind = "analysis-certificate";

    /// <summary>The format of this program's certificates; the schema is served under it.</summary>
    public const string OurFormat = "evengrist-certificate-of-analysis/1";
}

/// <summary>How much a certificate is about. Tonnes carry the UN/ECE code TNE.</summary>
/// <param name="LotTonnes">The whole lot.</param>
/// <param name="LotPackages">Its packages.</param>
/// <param name="DeliveredTonnes">What of it had gone to the customer.</param>
/// <param name="DeliveredPackages">In how many packages.</param>
public sealed record CertifiedQuantity(decimal LotTonnes, int LotPackages, decimal DeliveredTonnes, int DeliveredPackages);

/// <summary>One property as measured.</summary>
/// <param name="Property">Its name in readings.</param>
/// <param name="Words">Its name in words.</param>
/// <param name="Result">The result, rounded as it is reported.</param>
/// <param name="Unit">The unit.</param>
/// <param name="UnitCode">The unit's code of UN/ECE Recommendation 20; empty where there is none.</param>
/// <param name="Basis">The moisture basis, <c>14mb</c> or <c>dry</c>; <c>as is</c> for what has none.</param>
/// <param name="Method">How it was measured.</param>
/// <param name="Instrument">With what; may be empty.</param>
/// <param name="Readings">How many readings the result is of.</param>
/// <param name="Within">Whether the result as reported lies within the limits.</param>
/// <param name="Decision">The decision rule, in words.</param>
/// <param name="PlusMinus">Expanded uncertainty, k = 2; null where it is not known.</param>
/// <param name="Lower">Lower limit; null for none.</param>
/// <param name="Upper">Upper limit; null for none.</param>
public sealed record CertificateLine(
    string Property, string Words, decimal Result, string Unit, string UnitCode, string Basis, string Method, string Instrument, int Readings, bool Within, string Decision,
    decimal? PlusMinus = null, decimal? Lower = null, decimal? Upper = null);
