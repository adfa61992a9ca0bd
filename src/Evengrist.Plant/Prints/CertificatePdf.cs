using System.Globalization;
using Evengrist.Laboratory.Certificates;

namespace Evengrist.Plant.Prints;

/// <summary>A certificate of analysis as PDF, black on white: what was measured, on which basis, how, against what, who signed, and a code that tells whether it was altered.</summary>
public static class CertificatePdf
{
    private static readonly double[] Pairs = [0.15, 0.37, 0.13, 0.35], Columns = [0.16, -0.10, -0.08, 0.12, 0.23, 0.20, 0.11];

    /// <summary>The print.</summary>
    /// <param name="certificate">The certificate.</param>
    /// <param name="newest">The version that stands.</param>
    /// <param name="head">Whose, on which clock, printed when.</param>
    /// <param name="paper">The sheet.</param>
    public static byte[] Write(AnalysisCertificate certificate, int newest, PrintHead head, PaperSize paper)
    {
        ArgumentNullException.ThrowIfNull(certificate);
        ArgumentNullException.ThrowIfNull(head);
        ArgumentNullException.ThrowIfNull(paper);
        using var leaf = new Leaf(paper, $"Certificate of analysis {certificate.Number}", $"{certificate.Mill}: certificate of analysis {certificate.Number}, version {certificate.Version}, continued");
        leaf.Text(certificate.Mill + (certificate.IsInvented ? " (an invented mill)" : ""), 10, bold: true, gap: 0);
        leaf.Text("Certificate of analysis", 18, bold: true, gap: 2);
        leaf.Text($"{certificate.Number}, version {certificate.Version}", 10, bold: true, gap: 6);
        if (newest > certificate.Version)
        {
            leaf.Stamp("SUPERSEDED", $"Version {newest} stands in the place of this one.");
        }

        Head(leaf, certificate, head);
        Lines(leaf, certificate);
        leaf.Text("Sampling: " + certificate.Sampling);
        foreach (var decision in certificate.Lines.GroupBy(l => l.Decision))
        {
            leaf.Text($"Decision rule for {string.Join(", ", decision.Select(l => l.Words))}: {decision.Key}.");
        }

        foreach (var statement in certificate.Statements)
        {
            leaf.Text(statement);
        }

        leaf.Sign($"{certificate.SignedBy}, {head.Say(certificate.IssuedAt)}", "Stamp");
        leaf.Text($"Code {CertificateTwin.ShortCode(certificate)}", 10, bold: true);
        leaf.Text("The code is a fingerprint of this certificate's text. Verify it with the mill: its page Laboratory, Certificates, “Check one”, or by asking the signer; the answer says whether this certificate was issued, stands, and says what it said. "
            + (certificate.Signature is { } signature ? $"The JSON twin carries the mill's signature (ECDSA P-256, key {signature.Key}); anyone verifies it with the mill's public key from the same page." : "It was issued before this mill had a key, and carries no signature."), 8.5);
        return leaf.Close($"Issued {head.Say(certificate.IssuedAt)}, printed {head.Say(head.Printed)} ({head.Zone.Id}). SHA-256 {CertificateTwin.Code(certificate)}");
    }

    private static void Head(Leaf leaf, AnalysisCertificate certificate, PrintHead head)
    {
        var quantity = certificate.Quantity;
        string Tonnes(decimal tonnes) => tonnes.ToString("0.###", CultureInfo.InvariantCulture) + " t";
        (string Name, string Value)[] pairs =
        [
            ("Product", certificate.Product), ("Lot", certificate.Lot),
            ("Customer", certificate.Customer.Length > 0 ? certificate.Customer : "none in particular"), ("Market", certificate.Market.Length > 0 ? certificate.Market : "none in particular"),
            ("Packed", $"{head.Say(certificate.PackedFrom)} to {head.Say(certificate.PackedUntil)}"), ("Specification", certificate.Specification),
            ("Lot quantity", $"{Tonnes(quantity.LotTonnes)} in {quantity.LotPackages} packages"), ("To customer", quantity.DeliveredPackages > 0 ? $"{Tonnes(quantity.DeliveredTonnes)} in {quantity.DeliveredPackages}" : "none when issued"),
        ];
        for (var i = 0; i < pairs.Length; i += 2)
        {
            leaf.Row(Pairs, [pairs[i].Name, pairs[i].Value, pairs[i + 1].Name, pairs[i + 1].Value], ruled: false);
        }

        leaf.Gap(6);
    }

    private static void Lines(Leaf leaf, AnalysisCertificate certificate)
    {
        leaf.Row(Columns, ["property", "result", "±", "unit, basis", "method, readings", "limit", "within"], bold: true);
        foreach (var line in certificate.Lines)
        {
            leaf.Row(Columns, [
                line.Words, line.Result.ToString(CultureInfo.InvariantCulture), line.PlusMinus?.ToString(CultureInfo.InvariantCulture) ?? "not known", $"{line.Unit} {line.Basis}",
                $"{line.Method}{(line.Instrument.Length > 0 ? $", {line.Instrument}" : "")}; {(line.Readings == 1 ? "one" : $"mean of {line.Readings}")}", Limit(line), line.Within ? "yes" : "NO: OUTSIDE"]);
        }

        leaf.Gap(6);
    }

    private static string Limit(CertificateLine line) => line switch
    {
        { Lower: { } low, Upper: { } high } => string.Create(CultureInfo.InvariantCulture, $"{low} to {high}"),
        { Lower: { } low } => string.Create(CultureInfo.InvariantCulture, $"at least {low}"),
        { Upper: null } => "none",
        _ => string.Create(CultureInfo.InvariantCulture, $"at most {line.Upper}"),
    };
}
