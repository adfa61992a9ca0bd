using System.Text;
using CsCheck;
using Evengrist.Plant.Epcis;

namespace Evengrist.Edge.Tests.Plant.Epcis;

/// <summary>Nothing a document contains can crash the reading.</summary>
public sealed class EpcisBoundTests
{
    private static readonly string[] Words = ["{", "}", "[", "]", ":", ",", "\"type\"", "\"EPCISDocument\"", "\"epcisBody\"", "\"eventList\"", "null", "1e999", "\"\\ud800\"", "\"@context\"", "\"ObjectEvent\"", "true"];

    [Fact]
    public void Read_FiftyMegabytes_IsRefusedByItsSize()
    {
        var bytes = new byte[50_000_000];
        Array.Fill(bytes, (byte)'[');
        Assert.Contains("32 MiB", Assert.Single(EpcisCheck.Read(new MemoryStream(bytes)).Faults).ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[", "]")]
    [InlineData("{\"a\":", "}")]
    public void Read_NestedTenThousandDeep_IsRefusedByItsDepth(string open, string close)
    {
        var text = string.Concat(Enumerable.Repeat(open, 10_000)) + "1" + string.Concat(Enumerable.Repeat(close, 10_000));
        Assert.Contains("64 levels", Assert.Single(EpcisFiles.Read(text).Faults).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_MemberTwice_IsRefusedAtItsPlace()
    {
        var fault = Assert.Single(EpcisFiles.Read("""{"type":"EPCISDocument","epcisBody":{"eventList":[{"action":"ADD","action":"DELETE"}]}}""").Faults);
        Assert.Equal(("$.epcisBody.eventList[0].action", "each member once; it stands here twice"), (fault.Name, fault.Expected));
    }

    [Fact]
    public void Read_NotUtf8_IsRefused()
    {
        byte[] bytes = [.. Encoding.UTF8.GetBytes("{\"type\":\""), 0xC3, 0x28, .. Encoding.UTF8.GetBytes("\"}")];
        Assert.Contains("UTF-8", Assert.Single(EpcisCheck.Read(new MemoryStream(bytes)).Faults).ToString(), StringComparison.Ordinal);
        Assert.Contains("half of a character", Assert.Single(EpcisFiles.Read("""{"type":"\ud800"}""").Faults).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_CutShort_SaysWhere() => Assert.Equal((2, 9), EpcisFiles.Read("{\n\"type\": ").Faults.Select(f => (f.Line, f.Column)).Single());

    [Fact]
    public void Read_ManyFaults_ListsFiveHundredAndCountsTheRest()
    {
        var faults = EpcisFiles.Read($$"""{"@context":"a:b","type":"EPCISDocument","schemaVersion":"2.0","creationDate":"2025-01-01T00:00:00Z","epcisBody":{"eventList":[{{string.Join(',', Enumerable.Repeat("1", 700))}}] } }""").Faults;
        Assert.Equal(501, faults.Count);
        Assert.Contains("200 faults more", faults[^1].ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_AnyPieces_GivesFaultsAndNeverThrows() =>
        Gen.OneOf(Gen.String, Gen.OneOf(Words.Select(Gen.Const).ToArray())).Array[0, 40].Sample(parts =>
        {
            var parsed = EpcisFiles.Read(string.Concat(parts));
            return parsed.Ok || parsed.Faults.Count > 0;
        }, iter: 3000);
}
