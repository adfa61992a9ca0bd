using System.Text.Json;
using Evengrist.Cli;
using Evengrist.Edge.Tests.Web;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Stream surveys kept and shown from the command line, in a tiny mill.</summary>
public sealed class SurveyCommandTests
{
    private const string Survey = """{"unit":"UA","takenAt":"2025-09-16T09:00:00Z","takenBy":"Ada Miller","wheatTonnesPerHour":17.5,"table":{"basis":"14mb","streams":[{"code":"1M","yield":14,"ashPercent":0.37,"proteinPercent":11},{"code":"2M","yield":12.5,"ashPercent":0.39}]},"valves":[{"stream":"1M","now":"WB"}]}""";

    private static string Mill(Folder folder)
    {
        var path = folder.File("mill.db", "");
        File.Delete(path);
        TinyMill.Open(path).Dispose();
        return path;
    }

    [Fact]
    public void Keep_AndShown_AndKeptAgain()
    {
        using var folder = new Folder();
        var mill = Mill(folder);
        Assert.Contains("No stream survey is kept", Shell.Run("streams", "survey", "show", "--data", mill).Output, StringComparison.Ordinal);
        var (status, output, error) = Shell.Run("streams", "survey", "keep", "--in", folder.File("s.json", Survey), "--by", "Tam Underhill", "--data", mill);
        Assert.Equal((Exit.Done, ""), (status, error));
        Assert.Contains("The survey of UA, version 1, is kept: 2 streams.", output, StringComparison.Ordinal);
        Assert.Contains("version 2", Shell.Run("streams", "survey", "keep", "--in", folder.File("t.json", Survey.Replace("0.37", "0.38", StringComparison.Ordinal)), "--by", "x", "--data", mill).Output, StringComparison.Ordinal);
        var kept = JsonDocument.Parse(Shell.Run("streams", "survey", "show", "--unit", "ua", "--json", "--data", mill).Output).RootElement.GetProperty("surveys");
        Assert.Equal([0.37, 0.38], kept.EnumerateArray().Select(k => k.GetProperty("streams")[0].GetProperty("ashPercent").GetDouble()));
        Assert.Equal("WB", kept[1].GetProperty("streams")[0].GetProperty("wentTo").GetString());
        Assert.Contains("26.50", Shell.Run("streams", "survey", "show", "--data", mill).Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"unit\":\"UA\"", "\"unit\":\"UQ\"", "There is no unit UQ: there are UA")]
    [InlineData("\"yield\":14", "\"yield\":140", "more flour than wheat")]
    [InlineData("\"takenAt\":\"2025-09-16T09:00:00Z\"", "\"takenAt\":\"soon\"", "A moment is written like")]
    [InlineData("17.5", "-17.5", "at most at 1000 t/h; got -17.5")]
    [InlineData("\"valves\"", "\"valve\"", "valve")]
    public void Keep_WhatCannotBe_IsRefusedInWords(string was, string becomes, string says)
    {
        using var folder = new Folder();
        var (status, _, error) = Shell.Run("streams", "survey", "keep", "--in", folder.File("s.json", Survey.Replace(was, becomes, StringComparison.Ordinal)), "--by", "x", "--data", Mill(folder));
        Assert.Equal(Exit.BadInput, status);
        Assert.Contains(says, error, StringComparison.Ordinal);
    }
}
