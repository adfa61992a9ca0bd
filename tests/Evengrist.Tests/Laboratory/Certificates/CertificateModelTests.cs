using Evengrist.Laboratory.Certificates;
using Evengrist.Laboratory.Lots;
using Evengrist.Laboratory.Specifications;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tests.Laboratory.Lots;

namespace Evengrist.Tests.Laboratory.Certificates;

public sealed class CertificateModelTests
{
    private static readonly Specification Bakery = new("WB-BAKERY", "WB",
    [
        new(Property.Protein, "%", "the bakery's sheet") { Basis = Basis.At14, Lower = 11.7m, Upper = 12.1m },
        new(Property.Ash, "%", "the bakery's sheet") { Basis = Basis.At14, Upper = 0.46m, Required = false },
    ]) { Customer = "BAKERY", Market = "US", Name = "White bread" };

    [Fact]
    public void Certificate_OfAReleasedLot_SaysWhatWasMeasuredAndHow()
    {
        var (certificate, refused) = CertificateModel.Of(Spec());
        Assert.Empty(refused);
        var line = Assert.Single(certificate!.Lines);
        // Mean of 11.84 and 11.91; ± twice 0.12/√2.
        Assert.Equal((11.88m, "%", "P1", "14mb", "NIR", "NIR-2", 2, 0.17m, 11.7m, 12.1m, true), (line.Result, line.Unit, line.UnitCode, line.Basis, line.Method, line.Instrument, line.Readings, line.PlusMinus, line.Lower, line.Upper, line.Within));
        Assert.StartsWith("simple acceptance", line.Decision, StringComparison.Ordinal);
        Assert.Equal(("WB-250915-2.WB-BAKERY", "WB, White bread", "BAKERY", "WB-BAKERY version 1"), (certificate.Number, certificate.Product, certificate.Customer, certificate.Specification));
        Assert.Equal(new CertifiedQuantity(1m, 1, 0m, 0), certificate.Quantity);
        Assert.Contains(certificate.Statements, s => s.StartsWith("Every result was measured on this lot. No typical", StringComparison.Ordinal));
        Assert.Contains(certificate.Statements, s => s == "Not tested on this lot: ash.");
        Assert.Contains(certificate.Statements, s => s.StartsWith("Raw flour", StringComparison.Ordinal));
        Assert.Contains("2 samples of this lot: 0 of its packages, 2 of the flour on its way", certificate.Sampling, StringComparison.Ordinal);
    }

    [Fact]
    public void Certificate_OfALotOutsideALimit_SaysSo()
    {
        var (certificate, _) = CertificateModel.Of(Spec(readings: m => m.Read("U", 7, 12.3m).Read("U", 8, 12.3m)));
        Assert.False(Assert.Single(certificate!.Lines).Within);
    }

    [Fact]
    public void Certificate_IsRefused_WithEveryReason()
    {
        void Refused(CertificateSpec spec, string says)
        {
            var (certificate, refused) = CertificateModel.Of(spec);
            Assert.Null(certificate);
            Assert.Contains(refused, r => r.Contains(says, StringComparison.Ordinal));
        }

        var spec = Spec();
        Refused(spec with { Decision = null }, "is not released");
        Refused(spec with { Decision = Decided(LotVerdict.Hold) }, "is not released");
        Refused(spec with { Decision = Decided(LotVerdict.Rework) }, "is not released");
        Refused(spec with { Decision = Decided(LotVerdict.Downgrade) with { As = "AP" } }, "take a specification of AP");
        Refused(spec with { SignedBy = " " }, "who signs");
        Refused(Spec(readings: m => m), "is asked for and has no result");
        Refused(spec with { Results = [spec.Results[0] with { Readings = [.. spec.Results[0].Readings.Select(r => r with { Method = " " })] }] }, "names no method");
        Refused(spec with { Results = [spec.Results[0] with { Item = spec.Results[0].Item with { Basis = default } }] }, "no moisture basis");
        Refused(Spec(held: true), "on hold: release them first");
    }

    [Fact]
    public void Twin_ComesBackTheSame_WhateverItsBlanks()
    {
        var certificate = CertificateModel.Of(Spec()).Certificate!;
        certificate = certificate with { Lines = [.. certificate.Lines, certificate.Lines[0] with { Lower = null, PlusMinus = null }] }; // what there is none of is left out
        Assert.True(CertificateTwin.TryRead(CertificateTwin.Write(certificate), out var read, out var faults), string.Join(" ", faults));
        Assert.Equal(CertificateTwin.Code(certificate), CertificateTwin.Code(read));
        Assert.Equal(CertificateTwin.Canonical(certificate), CertificateTwin.Canonical(read));
        Assert.Matches("^[0-9a-f]{64}$", CertificateTwin.Code(certificate));
        Assert.Matches("^([0-9A-F]{4}-){4}[0-9A-F]{4}$", CertificateTwin.ShortCode(certificate));
        Assert.False(CertificateTwin.TryRead("""{ "format": "other" }""", out _, out _));
        Assert.False(CertificateTwin.TryRead(CertificateTwin.Write(certificate with { Format = "other/1" }), out _, out var other));
        Assert.Contains("evengrist-certificate-of-analysis/1", Assert.Single(other), StringComparison.Ordinal);
    }

    // FIPS 180-4 through openssl: printf '%s' "$text" | openssl dgst -sha256 gives the same; here the framework's own is held to the standard's example "abc".
    [Fact]
    public void Code_IsSha256() =>
        Assert.Equal("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData("abc"u8)));

    // The signature of FIPS 186-4 by the framework; that openssl takes the same bytes was tried by hand.
    [Fact]
    public void Signature_OfAKey_HoldsForItsTextAndNoOther()
    {
        using var mine = System.Security.Cryptography.ECDsa.Create(System.Security.Cryptography.ECCurve.NamedCurves.nistP256);
        using var others = System.Security.Cryptography.ECDsa.Create(System.Security.Cryptography.ECCurve.NamedCurves.nistP256);
        var (key, other, plain) = (CertificateKey.Of(mine), CertificateKey.Of(others), CertificateModel.Of(Spec()).Certificate!);
        AnalysisCertificate Signed(System.Security.Cryptography.ECDsa by, string id) => plain with
        {
            Signature = new(id, Convert.ToBase64String(by.SignData(CertificateKey.Signed(plain), System.Security.Cryptography.HashAlgorithmName.SHA256, System.Security.Cryptography.DSASignatureFormat.Rfc3279DerSequence))),
        };
        var signed = Signed(mine, key.Id);
        Assert.Equal(CertificateTwin.Code(plain), CertificateTwin.Code(signed)); // The code is of what it says, signed or not.
        Assert.True(key.Verifies(signed));
        Assert.False(key.Verifies(plain));
        Assert.False(key.Verifies(signed with { SignedBy = "Ben" }));
        Assert.False(other.Verifies(Signed(mine, other.Id)));
        Assert.False(key.Verifies(signed with { Signature = new(key.Id, "no base64") }));
        Assert.True(CertificateTwin.TryRead(CertificateTwin.Write(signed), out var read, out _));
        Assert.True(key.Verifies(read));
        Assert.Contains($"Signed by this mill's key {key.Id}", CertificateCheck.Of([signed], [other, key], read).Words, StringComparison.Ordinal);
        Assert.Contains("no signature", CertificateCheck.Of([plain], [key], CertificateTwin.ShortCode(plain)).Words, StringComparison.Ordinal);
        Assert.Contains("does not hold", CertificateCheck.Of([Signed(others, key.Id)], [key], CertificateTwin.ShortCode(signed)).Words, StringComparison.Ordinal);
        Assert.Contains("another signature", CertificateCheck.Of([signed], [key], Signed(others, key.Id)).Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_TellsIssuedFromSupersededAndAltered()
    {
        var first = CertificateModel.Of(Spec()).Certificate!;
        var second = first with { Version = 2, SignedBy = "Ben" };
        AnalysisCertificate[] all = [first, second];
        Assert.IsType<CertificateCheck.Issued>(CertificateCheck.Of(all, [], CertificateTwin.ShortCode(second)));
        Assert.Equal(2, Assert.IsType<CertificateCheck.Superseded>(CertificateCheck.Of(all, [], CertificateTwin.Code(first))).Newest);
        Assert.IsType<CertificateCheck.Issued>(CertificateCheck.Of(all, [], " " + CertificateTwin.ShortCode(second).ToLowerInvariant().Replace('-', ' ')));
        Assert.IsType<CertificateCheck.Issued>(CertificateCheck.Of(all, [], second));
        var altered = second with { Lines = [second.Lines[0] with { Result = 11.9m }] };
        Assert.Contains("was altered", Assert.IsType<CertificateCheck.NotIssued>(CertificateCheck.Of(all, [], altered)).Why, StringComparison.Ordinal);
        Assert.Contains("There is no", Assert.IsType<CertificateCheck.NotIssued>(CertificateCheck.Of(all, [], second with { Version = 3 })).Why, StringComparison.Ordinal);
        Assert.All(new[] { "", "12", "not a code at all, not at all", new string('a', 65) }, bad => Assert.Contains("20 to 64", Assert.IsType<CertificateCheck.NotIssued>(CertificateCheck.Of(all, [], bad)).Why, StringComparison.Ordinal));
        Assert.Contains("typing error", Assert.IsType<CertificateCheck.NotIssued>(CertificateCheck.Of(all, [], new string('0', 64))).Why, StringComparison.Ordinal);
    }

    private static CertificateSpec Spec(Func<Evengrist.Tests.Ledger.PosedMill, Evengrist.Tests.Ledger.PosedMill>? readings = null, bool held = false)
    {
        var mill = (readings ?? (m => m.Read("U", 7, 11.84m).Read("U", 8, 11.91m)))(LotMill.Open());
        if (held)
        {
            mill.Record(new Happen(mill.Key(), "P3", LotMill.At(20), HappeningKind.Held, "specks"));
        }

        var lot = LotMill.Lots(LotMill.ThreeShifts).Find(mill.Book, "WB-250915-2")!;
        return new CertificateSpec(lot, Decided(LotVerdict.Release), PackageStand.Of(mill.Book, lot, LotMill.At(40)), Bakery, "WB-BAKERY version 1", LotJudge.Of(Bakery, 0.95).Results(mill.Readings(lot.Code)), 120)
        {
            Mill = "Little Mill", SignedBy = "Ada", IssuedAt = LotMill.At(40),
        };
    }

    private static LotDecision Decided(LotVerdict verdict) => new("WB-250915-2", verdict, "Ada", LotMill.At(30), "near the limit");
}
