using System.Text.Json;
using Evengrist.Edge.Tests.Web;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Mix sheets kept and listed from the command line, in a tiny mill.</summary>
public sealed class SheetCommandTests
{
    private const string Sheet = """{"line":"MXA","flour":"WB","from":"2025-07-01T00:00:00Z","until":"2025-07-02T00:00:00Z","tonnesPerHour":5,"setBy":"Osric Venn","gates":[{"bin":"B01","class":"HW","sharePercent":60},{"bin":"B02","class":"HW","sharePercent":40}]}""";

    [Fact]
    public void Set_AndListed_AndCorrected()
    {
        using var folder = new Folder();
        var mill = folder.File("mill.db", "");
        File.Delete(mill);
        TinyMill.Open(mill).Dispose();
        var (status, output, error) = Shell.Run("mix", "set", "--in", folder.File("sheet.json", Sheet), "--by", "Tam Underhill", "--data", mill);
        Assert.Equal((0, ""), (status, error));
        Assert.Contains("version 1, is kept", output, StringComparison.Ordinal);
        var code = output[(output.IndexOf("MXA", StringComparison.Ordinal))..output.IndexOf(", version", StringComparison.Ordinal)];

        Assert.Contains("MXA has a sheet for that time", Shell.Run("mix", "set", "--in", folder.File("over.json", Sheet.Replace("2025-07-01T00", "2025-07-01T12", StringComparison.Ordinal)), "--by", "x", "--data", mill).Error, StringComparison.Ordinal);
        Assert.Contains("version 2", Shell.Run("mix", "set", "--in", folder.File("again.json", Sheet.Replace("60", "55", StringComparison.Ordinal).Replace(":40", ":45", StringComparison.Ordinal)), "--by", "x", "--code", code, "--data", mill).Output, StringComparison.Ordinal);

        var listed = JsonDocument.Parse(Shell.Run("mix", "sheets", "--data", mill, "--json", "--as-of", "2025-07-03T00:00:00Z").Output).RootElement.GetProperty("sheets");
        var only = Assert.Single(listed.EnumerateArray());
        Assert.Equal((2, 55), (only.GetProperty("version").GetInt32(), only.GetProperty("gates")[0].GetProperty("sharePercent").GetDouble()));
    }

    [Theory]
    [InlineData("\"sharePercent\":40", "\"sharePercent\":30", "add up to 90 %")]
    [InlineData("\"sharePercent\":40", "\"sharePercent\":-40", "above 0 and up to 100 %")]
    [InlineData("\"bin\":\"B02\"", "\"bin\":\"B99\"", "no bin B99")]
    [InlineData("2025-07-02T00", "2025-06-02T00", "ends before it begins")]
    [InlineData("\"line\":\"MXA\"", "\"line\":\"MXQ\"", "no mix line MXQ")]
    [InlineData("\"line\":\"MXA\",", "", "line must be there")]
    public void Set_WhatCannotBe_IsRefusedInWords(string was, string becomes, string says)
    {
        using var folder = new Folder();
        var mill = folder.File("mill.db", "");
        File.Delete(mill);
        TinyMill.Open(mill).Dispose();
        var (status, _, error) = Shell.Run("mix", "set", "--in", folder.File("sheet.json", Sheet.Replace(was, becomes, StringComparison.Ordinal)), "--by", "x", "--data", mill);
        Assert.Equal(2, status);
        Assert.Contains(says, error, StringComparison.Ordinal);
    }
}
