using System.Xml.Linq;

namespace Evengrist.Tests.Architecture;

/// <summary>The files of the project, read from the folder that holds the solution.</summary>
internal static class Repository
{
    private static readonly string[] NotOurs = ["/obj/", "/bin/", "/artifacts/", "/Migrations/"];

    public static string Root { get; } = Find();

    /// <summary>Source files under a folder, relative to the root; what tools wrote (migrations) is left out.</summary>
    public static IReadOnlyList<string> Sources(string folder, params string[] endings) =>
        Directory.EnumerateFiles(Path.Combine(Root, folder), "*", SearchOption.AllDirectories)
            .Select(f => Path.GetRelativePath(Root, f).Replace('\\', '/'))
            .Where(f => endings.Any(e => f.EndsWith(e, StringComparison.Ordinal)) && !NotOurs.Any(n => ("/" + f).Contains(n, StringComparison.Ordinal)))
            .Order(StringComparer.Ordinal)
            .ToList();

    public static string Text(string file) => File.ReadAllText(Path.Combine(Root, file));

    public static XDocument Xml(string file) => XDocument.Parse(Text(file));

    public static int Lines(string file) => File.ReadLines(Path.Combine(Root, file)).Count();

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Evengrist.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException($"Evengrist.slnx was not found above {AppContext.BaseDirectory}.");
    }
}
