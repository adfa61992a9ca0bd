using System.Text.Json;
using Evengrist.Cli;
using Evengrist.Edge.Tests.Web;
using Evengrist.Laboratory;
using Evengrist.Laboratory.Lots;
using Evengrist.Laboratory.Methods;
using Evengrist.Laboratory.Specifications;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records.Laboratory;
using NodaTime;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>A lot through the command line: decided, certified, judged again. One pallet of a tiny mill, read 11.90 % protein by an instrument whose check was overdue; invented.</summary>
public sealed class LabLotCommandTests
{
    private const string Lot = "WB-250915", At = "2025-09-16T06:00:00Z", Later = "2025-09-16T08:00:00Z";

    [Fact]
    public void Lot_OnAnInstrumentOverdue_IsReleasedWithAReasonAlone_AndThenCertified()
    {
        using var folder = new Folder();
        var mill = Filled(folder);
        var (status, output, error) = Shell.Run("lab", "lot", Lot, "--asof", At, "--data", mill);
        Assert.Equal((Exit.Done, ""), (status, error));
        Assert.Contains("held against WB version 1", output, StringComparison.Ordinal);
        Assert.Contains("NIR-2 was overdue for its check", output, StringComparison.Ordinal);
        Assert.Contains("the figures advise: hold", output, StringComparison.Ordinal);

        (int Status, string Output, string Error) Certify(params string[] more) => Shell.Run(["lab", "certificate", "--data", mill, .. more]);
        Assert.Contains("is not released", Certify("--issue", Lot, "--by", "Ada", "--at", At).Error, StringComparison.Ordinal);
        (int Status, string Output, string Error) Decide(params string[] more) => Shell.Run(["lab", "lot", Lot, "--asof", At, "--data", mill, .. more]);
        foreach (var (asked, says) in new (string[] Asked, string Says)[]
        {
            (["--decide", "release", "--by", "Ada"], "Test it again on another instrument"), (["--decide", "release", "--by", "Ben", "--reason", "x"], "Ben is not among those"), (["--decide", "maybe", "--by", "Ada", "--reason", "x"], "Say what is decided"),
        })
        {
            var refused = Decide(asked);
            Assert.Equal(Exit.BadInput, refused.Status);
            Assert.Contains(says, refused.Error, StringComparison.Ordinal);
        }

        Assert.Contains("There is no lot WB-250101", Shell.Run("lab", "lot", "WB-250101", "--asof", At, "--data", mill).Error, StringComparison.Ordinal);
        var released = JsonDocument.Parse(Decide("--decide", "release", "--by", "Ada", "--reason", "the customer takes it on our word", "--json").Output).RootElement;
        Assert.Equal(("Released", "hold"), (released.GetProperty("state").GetString(), released.GetProperty("advice").GetString()));
        Assert.Contains("overdue", released.GetProperty("results")[0].GetProperty("outOfCheck").GetString(), StringComparison.Ordinal);

        var (twin, pdf) = (Path.Combine(folder.Path, "twin.json"), Path.Combine(folder.Path, "c.pdf"));
        var issued = JsonDocument.Parse(Certify("--issue", Lot, "--by", "Ada", "--at", Later, "--twin", twin, "--pdf", pdf, "--json").Output).RootElement;
        Assert.Equal((Lot + ".WB", 1), (issued.GetProperty("number").GetString(), issued.GetProperty("version").GetInt32()));
        Assert.StartsWith("%PDF", File.ReadAllText(pdf), StringComparison.Ordinal);
        Assert.Contains("the customer takes it on our word", File.ReadAllText(twin), StringComparison.Ordinal);
        var code = issued.GetProperty("shortCode").GetString()!;
        Assert.Contains(code, Certify("--number", Lot + ".WB").Output, StringComparison.Ordinal);
        var (good, bad) = (Certify("--check", code).Output, Certify("--check", "0000-0000").Output);
        Assert.NotEqual(good, bad);
        Assert.Equal(good, Certify("--check", twin).Output);
        File.WriteAllText(twin, File.ReadAllText(twin).Replace("11.9", "11.8", StringComparison.Ordinal));
        Assert.NotEqual(good, Certify("--check", twin).Output); // a changed figure is not what was issued
        Assert.Contains("the number of a certificate that was issued", Certify("--number", "NOPE").Error, StringComparison.Ordinal);
        Assert.Contains("Give one of", Certify().Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Rejudge_OfAnInstrumentThatReadWrong_PutsTheLotRight()
    {
        using var folder = new Folder();
        var mill = Filled(folder);
        (int Status, string Output, string Error) Ask(string instrument = "nir-2", string property = "Protein", string until = "2025-09-17T00:00:00Z", params string[] more) => Shell.Run(
            ["lab", "rejudge", "--instrument", instrument, "--property", property, "--from", "2025-09-15T00:00:00Z", "--until", until, "--bias", "0.28", "--pm", "0.04", "--asof", "2025-09-18T00:00:00Z", "--data", mill, .. more]);
        var lot = Assert.Single(JsonDocument.Parse(Ask(more: "--json").Output).RootElement.EnumerateArray());
        Assert.Equal((Lot, 1, 1.0), (lot.GetProperty("lot").GetString(), lot.GetProperty("wrong").GetInt32(), lot.GetProperty("goneTonnes").GetDouble()));
        Assert.Equal((11.9, 11.62), (lot.GetProperty("before").GetProperty("result").GetDouble(), lot.GetProperty("after").GetProperty("result").GetDouble()));
        Assert.True(lot.GetProperty("after").GetProperty("chance").GetDouble() < 0.1); // 11.62 against at least 11.7
        Assert.Contains("1 lots hang on it.", Ask().Output, StringComparison.Ordinal);
        Assert.Contains("0 lots hang on it.", Ask(instrument: "NIR-9").Output, StringComparison.Ordinal);
        foreach (var (refused, says) in new[] { (Ask(property: "Weight"), "a property of readings"), (Ask(until: "2025-09-14T00:00:00Z"), "ends before it begins"), (Ask(until: "2025-12-14T00:00:00Z"), "at most 28 days") })
        {
            Assert.Equal(Exit.BadInput, refused.Status);
            Assert.Contains(says, refused.Error, StringComparison.Ordinal);
        }
    }

    private static string Filled(Folder folder)
    {
        var path = folder.File("mill.db", "");
        File.Delete(path);
        using var mill = TinyMill.Open(path);
        KeepReleaseRules.Keep(mill, new ReleaseRules(1, 0, ["Ada"]), "Ada");
        FlourSpecifications.Keep(mill, new Specification("WB", "WB", [new(Property.Protein, "%", "posed") { Basis = Basis.At14, Lower = 11.7m, Upper = 12.1m }]), "Ada");
        KeepLabInstruments.Keep(mill, new LabInstruments([new("NIR-2", ["NIR"], 24, [new(Property.Protein, 0.2m, FigureMark.Mill, "posed")], [])]), "Ada");
        mill.Record([new Measure("r", "P-0001", TinyMill.Morning + Duration.FromHours(15), Property.Protein, 11.90m, "%", Basis.At14, "NIR", "NIR-2", 0.05m)], "Ada", "test");
        return path;
    }
}
