using System.Text.Json;
using Evengrist.Edge.Tests.Web;
using Evengrist.Season.Terms;
using NodaTime;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Relations of flour to wheat kept and shown from the command line, in a tiny mill.</summary>
public sealed class RelationCommandTests
{
    private const string Relation = """{"flour":"WB","relation":{"what":"Protein","wheatBasis":"12mb","flourBasis":"14mb","intercept":-1.3,"slope":1,"uncertainty":0.2,"isFitted":false,"source":"a book"}}""";

    private static string Filled(Folder folder, bool terms = true)
    {
        var path = folder.File("mill.db", "");
        File.Delete(path);
        using var mill = TinyMill.Open(path);
        if (terms)
        {
            mill.Papers(SeasonTerms.Kind).Keep(SeasonTerms.Code, 1, new SeasonTerms { End = new LocalDate(2026, 6, 30), Currency = "USD", Units = [new UnitTerms("A", 5, 24)], Flours = [new FlourTerms("WB", "White bread", "A", 100, 0.7, 900)] }.ToJson(), "x");
        }

        return path;
    }

    [Fact]
    public void Keep_AndShown_AndKeptAgain()
    {
        using var folder = new Folder();
        var mill = Filled(folder);
        var (status, output, error) = Shell.Run("mix", "relation", "keep", "--in", folder.File("r.json", Relation), "--by", "Tam Underhill", "--data", mill);
        Assert.Equal((0, ""), (status, error));
        Assert.Contains("Relation WB Protein, version 1, is kept: flour protein 14mb = -1.3 + 1 × wheat 12mb, ± 0.4 (not fitted on this mill: a book).", output, StringComparison.Ordinal);
        Assert.Contains("version 2", Shell.Run("mix", "relation", "keep", "--in", folder.File("s.json", Relation.Replace("-1.3", "-1.1", StringComparison.Ordinal)), "--by", "x", "--data", mill).Output, StringComparison.Ordinal);

        var rows = JsonDocument.Parse(Shell.Run("mix", "relation", "show", "--data", mill, "--json").Output).RootElement.GetProperty("relations");
        Assert.Equal(["protein", "ash"], rows.EnumerateArray().Select(r => r.GetProperty("what").GetString()));
        var kept = rows[0].GetProperty("kept");
        Assert.Equal((2, -1.1, 0.2), (kept.GetProperty("version").GetInt32(), kept.GetProperty("intercept").GetDouble(), kept.GetProperty("standardUncertainty").GetDouble()));
        Assert.Contains("Too few: 0 of at least 5 runs", rows[0].GetProperty("fit").GetProperty("whyNot").GetString(), StringComparison.Ordinal);
        Assert.Contains("version 2, not fitted", Shell.Run("mix", "relation", "show", "--data", mill).Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"slope\":1", "\"slope\":0", "a slope other than 0")]
    [InlineData("\"uncertainty\":0.2", "\"uncertainty\":-0.2", "an uncertainty of 0 or more")]
    [InlineData("\"flour\":\"WB\"", "\"flour\":\"QQ\"", "There is no flour QQ in the terms: there is WB")]
    [InlineData("a book", "", "Say where it comes from")]
    [InlineData("\"slope\":1,", "", "slope")]
    [InlineData("Protein", "Colour", "what")]
    public void Keep_WhatCannotBe_IsRefusedInWords(string was, string becomes, string says)
    {
        using var folder = new Folder();
        var (status, _, error) = Shell.Run("mix", "relation", "keep", "--in", folder.File("r.json", Relation.Replace(was, becomes, StringComparison.Ordinal)), "--by", "x", "--data", Filled(folder));
        Assert.Equal(2, status);
        Assert.Contains(says, error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--flour WB", "Too few: 0 of at least 5 runs")]
    [InlineData("--flour QQ", "There is no flour QQ in the terms")]
    [InlineData("--flour WB --what colour", "A relation is kept for protein, ash")]
    [InlineData("--flour WB --what fallingNumber", "type the relation with its source")]
    [InlineData("", "Give the relation with --in FILE")]
    public void Keep_AFitThatIsNotThere_SaysWhy(string asked, string says)
    {
        using var folder = new Folder();
        var (status, _, error) = Shell.Run(["mix", "relation", "keep", .. asked.Split(' ', StringSplitOptions.RemoveEmptyEntries), "--by", "x", "--data", Filled(folder)]);
        Assert.Equal(2, status);
        Assert.Contains(says, error, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Show_WithoutTerms_SaysWhatToDo()
    {
        using var folder = new Folder();
        Assert.Contains("No terms of a crop year are kept", Shell.Run("mix", "relation", "show", "--data", Filled(folder, terms: false)).Output, StringComparison.Ordinal);
    }
}
