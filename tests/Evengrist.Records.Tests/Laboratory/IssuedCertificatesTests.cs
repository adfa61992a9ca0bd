using Evengrist.Laboratory.Certificates;
using Evengrist.Laboratory.Lots;
using Evengrist.Laboratory.Specifications;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records.Laboratory;
using Evengrist.Records.Tests.Stores;
using NodaTime;

namespace Evengrist.Records.Tests.Laboratory;

public sealed class IssuedCertificatesTests
{
    private static readonly Instant Packed = SmallMill.Morning + Duration.FromHours(1), Later = SmallMill.Morning + Duration.FromHours(5);

    [Theory, OnSqlite, OnPostgres]
    public void Issue_OfAReleasedLot_IsKeptByVersionAndCanBeChecked(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        mill.Record(
            [
                new OpenPlace("gain", "GAIN", PlaceKind.Gain), new OpenPlace("fb", "FB1", PlaceKind.FlourBin, Material: "WB"), new OpenPlace("l1", "L1", PlaceKind.BulkLoad, Material: "WB"),
                new Move("g", "GAIN", "FB1", Mass.FromTonnes(60m), SmallMill.Morning), new Move("m1", "FB1", "L1", Mass.FromTonnes(20m), Packed),
                new Measure("r", "L1", Packed, Property.Protein, 11.90m, "%", Basis.At14, "combustion", "N-1", 0.05m),
            ],
            "Ada", "test");
        KeepReleaseRules.Keep(mill, new ReleaseRules(1, 0, ["Ada"]), "Ada");
        (AnalysisCertificate? Certificate, IReadOnlyList<string> Refused) Issue(string by = "Ada", string specification = "", int hours = 1) => IssuedCertificates.Issue(mill, "WB-260701", specification, by, Later + Duration.FromHours(hours));
        Assert.Contains("keep one first", Assert.Single(Issue().Refused), StringComparison.Ordinal);
        FlourSpecifications.Keep(mill, new Specification("WB", "WB", [new(Property.Protein, "%", "posed") { Basis = Basis.At14, Lower = 11.7m, Upper = 12.1m }]), "Ada");
        Assert.Contains("is not released", Assert.Single(Issue().Refused), StringComparison.Ordinal);
        Assert.Contains("there are WB", Assert.Single(Issue(specification: "HG").Refused), StringComparison.Ordinal);
        Assert.Empty(new DecideLot("WB-260701", LotVerdict.Release, "", Later).In(mill, "Ada").Faults);
        Assert.Contains(Issue(by: "Ben").Refused, r => r.Contains("Ben is not among those", StringComparison.Ordinal));
        Assert.Contains(Issue(by: " ").Refused, r => r.Contains("who signs", StringComparison.Ordinal));
        Assert.Empty(IssuedCertificates.All(mill));

        var (first, second) = (Issue().Certificate!, Issue(hours: 2).Certificate!);
        Assert.Equal(("WB-260701.WB", 1, 2), (first.Number, first.Version, second.Version));
        Assert.Equal([1, 2], IssuedCertificates.All(mill).Select(c => c.Version));
        Assert.Equal(CertificateTwin.Code(first), CertificateTwin.Code(IssuedCertificates.Find(mill, "wb-260701.wb", 1)!));
        Assert.IsType<CertificateCheck.Superseded>(IssuedCertificates.Check(mill, CertificateTwin.ShortCode(first)));
        Assert.Equal(11.90m, Assert.Single(second.Lines).Result);
        var key = Assert.Single(CertificateKeys.All(mill)); // One key signs both.
        Assert.All(IssuedCertificates.All(mill), c => Assert.True(key.Verifies(c)));
        Assert.IsType<CertificateCheck.Issued>(IssuedCertificates.Check(mill, second));
        Assert.IsType<CertificateCheck.NotIssued>(IssuedCertificates.Check(mill, second with { Signature = first.Signature }));

        var wrong = new WrongSpan("N-1", Property.Protein, SmallMill.Morning, Later, 0.3, 0.01);
        Assert.Contains("not among those", Assert.Single(InstrumentsFoundWrong.Keep(mill, wrong, "Ben", Later)), StringComparison.Ordinal);
        Assert.Contains("before it begins", Assert.Single(InstrumentsFoundWrong.Keep(mill, wrong with { Until = SmallMill.Morning }, "Ada", Later)), StringComparison.Ordinal);
        Assert.Empty(InstrumentsFoundWrong.Keep(mill, wrong, "Ada", Later + Duration.FromMinutes(150)));
        Assert.Equal(2, IssuedCertificates.Draft(mill, "WB-260701", "", "Ada", Later + Duration.FromMinutes(140)).Certificate!.Version - 1); // before it was found the readings still spoke
        Assert.Contains(Issue(hours: 3).Refused, r => r.Contains("has no result", StringComparison.Ordinal));

        new DecideLot("WB-260701", LotVerdict.Hold, "complaint", Later + Duration.FromHours(3)).In(mill, "Ada");
        Assert.Contains(Issue(hours: 4).Refused, r => r.Contains("is not released", StringComparison.Ordinal));
    }
}
