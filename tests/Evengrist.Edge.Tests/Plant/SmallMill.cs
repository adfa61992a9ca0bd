using System.Text;
using Evengrist.Ledger;
using Evengrist.Plant;
using Evengrist.Plant.Imports;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Edge.Tests.Plant;

/// <summary>The small mill of the samples, imported into a book.</summary>
internal static class SmallMill
{
    public static readonly (string File, ImportKind Kind)[] Files =
    [
        ("bins.csv", ImportKind.Bins), ("intake.csv", ImportKind.Intake), ("readings.csv", ImportKind.Readings),
        ("movements.csv", ImportKind.Movements), ("intake-week-2.xlsx", ImportKind.Intake),
    ];

    public static readonly Instant Recorded = InstantPattern.ExtendedIso.Parse("2025-06-20T12:00:00Z").Value;

    public static Parsed<Batch> Read(string text, ImportKind kind, ImportOptions? options = null) =>
        Import.Read(new MemoryStream(Encoding.UTF8.GetBytes(text)), kind, options ?? new ImportOptions());

    public static Parsed<Batch> ReadFile(string path, ImportKind kind)
    {
        using var file = File.OpenRead(path);
        return Import.Read(file, kind, new ImportOptions());
    }

    public static Book Book()
    {
        var book = new Book();
        foreach (var (file, kind) in Files)
        {
            var batch = ReadFile(Repository.Sample("small-mill", file), kind).Value;
            book.Append(book.ToFacts(batch.Drafts, "Ada", batch.Source, Recorded));
        }

        return book;
    }
}
