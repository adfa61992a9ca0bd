using Evengrist.Plant.Gs1;
using Evengrist.Plant.Gs1.Links;

namespace Evengrist.Edge.Tests.Plant.Gs1;

public sealed class LinkTests
{
    private const int Year = 2026;

    // Pairs of RalphTro/epcis-event-hash-generator, tests/dl_normaliser_test.py.
    [Theory]
    [InlineData("urn:epc:class:lgtin:4012345.012345.Lot987", "https://id.gs1.org/01/04012345123456/10/Lot987")]
    [InlineData("urn:epc:id:sgtin:4012345.011111.9876", "https://id.gs1.org/01/04012345111118/21/9876")]
    [InlineData("urn:epc:idpat:sgtin:4012345.012345.*", "https://id.gs1.org/01/04012345123456")]
    [InlineData("urn:epc:id:sscc:4012345.3111111111", "https://id.gs1.org/00/340123451111111111")]
    [InlineData("urn:epc:id:sgln:4012345.00005.122", "https://id.gs1.org/414/4012345000054/254/122")]
    [InlineData("urn:epc:id:pgln:4000001.00000", "https://id.gs1.org/417/4000001000005")]
    [InlineData("urn:epc:id:gdti:4012345.00009.PO-4711", "https://id.gs1.org/253/4012345000092PO-4711")]
    [InlineData("urn:epc:id:giai:4012345.ABC345", "https://id.gs1.org/8004/4012345ABC345")]
    [InlineData("urn:epc:id:grai:4012345.00022.334455", "https://id.gs1.org/8003/04012345000221334455")]
    [InlineData("urn:epc:id:sgtin:4012345.011111.98%22", "https://id.gs1.org/01/04012345111118/21/98%22")]
    [InlineData("urn:epc:id:sgtin:4012345.011111.6789%2F%26%25%22!%3F()", "https://id.gs1.org/01/04012345111118/21/6789%2F%26%25%22%21%3F%28%29")]
    public void EpcUri_PublishedPairs_GoBothWays(string uri, string link)
    {
        Assert.Equal(link, DigitalLinks.Write(EpcUris.Read(uri, Year).Value).Value);
        Assert.Equal(uri, EpcUris.Write(DigitalLinks.Read(link, Year).Value, 7).Value);
    }

    [Theory]
    [InlineData("https://id.gs1.org/01/09521234543213/10/ABC123/21/12345", "(01)09521234543213(10)ABC123(21)12345")] // Barcode Writer in Pure PostScript, page "GS1 Digital Link"
    [InlineData("https://id.gs1.org/01/09521234543213/10/ABC123?17=261231", "(01)09521234543213(17)261231(10)ABC123")] // the same page
    [InlineData("https://id.gs1.org/01/09521234002017/10/F24-0915-2/21/1001?15=250315", "(01)09521234002017(15)250315(10)F24-0915-2(21)1001")]
    [InlineData("HTTP://flour.example/some/where/01/9521234002017?linkType=all&15=250315#top", "(01)09521234002017(15)250315")]
    [InlineData("https://id.gs1.org/00/095212340000000426?02=09521234002017&10=F24&15=250315&37=40", "(00)095212340000000426(02)09521234002017(15)250315(10)F24(37)40")]
    public void DigitalLink_OfAnyDomain_IsReadAndMadeCanonical(string link, string forPeople)
    {
        var read = DigitalLinks.Read(link, Year).Value;
        Assert.Equal(forPeople, read.ToString());
        var canonical = DigitalLinks.Write(read).Value;
        Assert.StartsWith("https://id.gs1.org/0", canonical, StringComparison.Ordinal);
        Assert.Equal(canonical, DigitalLinks.Write(DigitalLinks.Read(canonical, Year).Value).Value);
        Assert.True(canonical == link || !link.StartsWith(DigitalLinks.Canonical, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("https://id.gs1.org/01/09521234543213/10/ABC123/22/2A", "in this order")] // wrong order, GS1's syntax dictionary names this as invalid
    [InlineData("https://id.gs1.org/01/09521234543213/10/A/235/B", "in this order")] // and this: orders mixed
    [InlineData("https://id.gs1.org/01/09521234543213/10/A/10/B", "each once")]
    [InlineData("https://id.gs1.org/01/09521234543212", "check digit")]
    [InlineData("https://id.gs1.org/01/09521234543213?21=1", "belongs in the path")]
    [InlineData("https://id.gs1.org/01/09521234543213?17=261332", "a date")]
    [InlineData("https://id.gs1.org/01/09521234543213/10/A%2", "hexadecimal")]
    [InlineData("https://id.gs1.org/01/09521234543213/10/A%C3%A4", "hexadecimal")]
    [InlineData("https://id.gs1.org/gtin/09521234543213", "a primary key")]
    [InlineData("https://id.gs1.org", "a primary key")]
    [InlineData("https://", "a primary key")]
    [InlineData("ftp://id.gs1.org/01/09521234543213", "begins with https://")]
    public void DigitalLink_WhatIsWrong_IsSaid(string link, string expected) =>
        Assert.Contains(DigitalLinks.Read(link, Year).Faults, f => f.Expected.Contains(expected, StringComparison.Ordinal));

    [Theory]
    [InlineData("urn:epc:id:sgtin:4012345.01111.9876", "until there are 13")]
    [InlineData("urn:epc:id:sgtin:4012345.011111", "3 parts")]
    [InlineData("urn:epc:id:sscc:40123.4531111111111", "6 to 12 digits")]
    [InlineData("urn:epc:idpat:sgtin:4012345.012345.1", "* at the end")]
    [InlineData("urn:epc:id:sgtin:4012345.011111.9#8", "alone")]
    [InlineData("urn:epc:id:upui:1234567.098765.51qIgY", "of one of these kinds")]
    public void EpcUri_WhatIsWrong_IsSaid(string uri, string expected) =>
        Assert.Contains(EpcUris.Read(uri, Year).Faults, f => f.Expected.Contains(expected, StringComparison.Ordinal));

    [Fact]
    public void EpcUri_WithoutThePrefixLength_IsNotGuessed()
    {
        var pallet = ElementString.Make([("00", "095212340000000426")], Year).Value;
        Assert.Equal("urn:epc:id:sscc:9521234.0000000042", EpcUris.Write(pallet, 7).Value);
        Assert.Equal("urn:epc:id:sscc:95212340.000000042", EpcUris.Write(pallet, 8).Value);
        Assert.Contains("length of the company prefix", EpcUris.Write(pallet, 4).Faults[0].Expected, StringComparison.Ordinal);
    }
}
