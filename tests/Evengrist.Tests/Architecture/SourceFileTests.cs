namespace Evengrist.Tests.Architecture;

public sealed class SourceFileTests
{
    private const int MostLines = 400;
    private const int MedianBelow = 80;

    private static readonly string[] EmptyNames = ["Common", "Core", "Util", "Utils", "Utilities", "Helper", "Helpers", "Services", "Infrastructure", "Application"];
    private static readonly string[] EmptyEndings = ["Manager", "Helper", "Helpers", "Util", "Utils"];

    [Fact]
    public void Length_EverySourceFile_AtMost400Lines()
    {
        var files = new[] { "src", "tests", "bench" }.SelectMany(f => Repository.Sources(f, ".cs", ".razor")).ToList();
        Assert.True(files.Count > 50, "The sources were not found.");
        Assert.Empty(files.Where(f => Repository.Lines(f) > MostLines).Select(f => $"{f}: {Repository.Lines(f)} lines"));
    }

    [Fact]
    public void Length_MedianOfTheSources_Below80Lines()
    {
        var lengths = Repository.Sources("src", ".cs").Select(Repository.Lines).Order().ToList();
        var median = (lengths[(lengths.Count - 1) / 2] + lengths[lengths.Count / 2]) / 2.0;
        Assert.True(median < MedianBelow, FormattableString.Invariant($"The median source file has {median} lines."));
    }

    [Fact]
    public void Name_FilesAndFolders_AreWordsOfTheMill() =>
        Assert.DoesNotContain(Repository.Sources("src", ".cs", ".razor"), f => f.Split('/').Skip(1)
            .Select(part => Path.GetFileNameWithoutExtension(part).Split('.')[^1])
            .Any(part => EmptyNames.Contains(part) || EmptyEndings.Any(e => part.EndsWith(e, StringComparison.Ordinal))));

    [Fact]
    public void Text_EverySourceFile_LeavesNothingUndone() =>
        Assert.DoesNotContain(Repository.Sources("src", ".cs", ".razor"), f =>
        {
            var text = Repository.Text(f);
            return text.Contains("NotImplementedException", StringComparison.Ordinal) || text.Contains("TODO", StringComparison.Ordinal) || text.Contains("FIXME", StringComparison.Ordinal);
        });
}
