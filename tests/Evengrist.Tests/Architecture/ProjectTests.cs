using System.Text.Json;

namespace Evengrist.Tests.Architecture;

/// <summary>What each project may reference, and what src/Evengrist may be made of.</summary>
public sealed class ProjectTests
{
    private const string DomainProject = "src/Evengrist/Evengrist.csproj";
    private static readonly string[] RuntimePackages = ["MathNet.Numerics", "NodaTime"];

    private static readonly Dictionary<string, string[]> MayReference = new()
    {
        ["Evengrist"] = [],
        ["Evengrist.Planning"] = ["Evengrist"],
        ["Evengrist.Records"] = ["Evengrist", "Evengrist.Planning"],
        ["Evengrist.Plant"] = ["Evengrist"],
        ["Evengrist.Demo"] = ["Evengrist", "Evengrist.Records"],
        ["Evengrist.Web"] = ["Evengrist", "Evengrist.Planning", "Evengrist.Records", "Evengrist.Plant", "Evengrist.Demo"],
        ["Evengrist.Cli"] = ["Evengrist", "Evengrist.Planning", "Evengrist.Records", "Evengrist.Plant", "Evengrist.Demo"],
    };

    [Fact]
    public void References_EveryProject_StayWithinTheTable()
    {
        var projects = Repository.Sources("src", ".csproj");
        Assert.Contains(DomainProject, projects);
        foreach (var project in projects)
        {
            var name = Path.GetFileNameWithoutExtension(project);
            Assert.True(MayReference.ContainsKey(name), $"{name} is not in the table of projects.");
            Assert.All(Items(project, "ProjectReference").Select(r => Path.GetFileNameWithoutExtension(r.Replace('\\', '/'))), used =>
                Assert.True(MayReference[name].Contains(used), $"{name} may not reference {used}."));
        }
    }

    [Fact]
    public void Packages_OfTheDomain_AreNodaTimeAndMathNetOnly()
    {
        Assert.Equal(RuntimePackages, Items(DomainProject, "PackageReference").Order(StringComparer.Ordinal));
        var shared = new[] { "eng/Domain.targets", "Directory.Build.props" }.SelectMany(f => Repository.Xml(f).Descendants("PackageReference"));
        Assert.All(shared, p => Assert.Equal("all", p.Attribute("PrivateAssets")?.Value)); // analyzers: they run in the compiler and ship with nothing
    }

    [Fact]
    public void Packages_Resolved_BringNothingElse()
    {
        using var locked = JsonDocument.Parse(Repository.Text("src/Evengrist/packages.lock.json"));
        var analyzers = Repository.Xml("eng/Domain.targets").Descendants("PackageReference").Select(p => p.Attribute("Include")!.Value);
        var resolved = locked.RootElement.GetProperty("dependencies").EnumerateObject().SelectMany(f => f.Value.EnumerateObject()).Select(p => p.Name);
        Assert.Equal(RuntimePackages, resolved.Except(analyzers).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void BannedSymbols_Wired_AndNowhereSwitchedOff()
    {
        Assert.Contains("../../eng/Domain.targets", Repository.Xml(DomainProject).Descendants("Import").Select(i => i.Attribute("Project")?.Value));
        Assert.Contains("Microsoft.CodeAnalysis.BannedApiAnalyzers", Items("eng/Domain.targets", "PackageReference"));
        Assert.Contains("$(MSBuildThisFileDirectory)BannedSymbols.Domain.txt", Items("eng/Domain.targets", "AdditionalFiles"));
        var banned = Repository.Text("eng/BannedSymbols.Domain.txt");
        string[] walls = ["N:System.IO;", "N:System.Net;", "N:System.Threading.Tasks;", "T:System.Threading.Thread;", "P:System.DateTime.UtcNow;",
            "P:System.DateTimeOffset.UtcNow;", "T:System.TimeProvider;", "P:NodaTime.SystemClock.Instance;", "M:System.Guid.NewGuid;", "T:System.Random;", "T:System.Console;"];
        Assert.All(walls, w => Assert.Contains(w, banned, StringComparison.Ordinal));
        Silenced("RS0030");
    }

    [Fact]
    public void MissingDocs_OfTheDomain_AreErrorsAndNowhereSilenced()
    {
        Assert.Contains(".Replace('CS1591', '')", Repository.Text("eng/Domain.targets"), StringComparison.Ordinal);
        var shared = Repository.Xml("Directory.Build.props");
        Assert.Equal("true", shared.Descendants("GenerateDocumentationFile").Single().Value);
        Assert.Equal("true", shared.Descendants("TreatWarningsAsErrors").Single().Value);
        Assert.DoesNotContain("CS1591", shared.Descendants("WarningsNotAsErrors").Single().Value, StringComparison.Ordinal);
        Silenced("CS1591");
    }

    private static void Silenced(string warning)
    {
        Assert.DoesNotContain("NoWarn", Repository.Text(DomainProject), StringComparison.Ordinal);
        Assert.All(Repository.Sources("src/Evengrist", ".cs"), f =>
        {
            var text = Repository.Text(f);
            Assert.DoesNotContain($"#pragma warning disable {warning}", text, StringComparison.Ordinal);
            Assert.DoesNotContain($"SuppressMessage(\"{warning}", text, StringComparison.Ordinal);
        });
        var section = "";
        foreach (var line in Repository.Text(".editorconfig").Split('\n').Select(l => l.Trim()))
        {
            section = line.StartsWith('[') ? line : section;
            Assert.False(line.Contains(warning, StringComparison.Ordinal) && !section.StartsWith("[{tests,bench}", StringComparison.Ordinal), $".editorconfig {section}: {line}");
        }
    }

    private static IEnumerable<string> Items(string file, string element) =>
        Repository.Xml(file).Descendants(element).Select(e => e.Attribute("Include")?.Value).OfType<string>();
}
