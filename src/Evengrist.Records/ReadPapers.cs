namespace Evengrist.Records;

/// <summary>What papers say, as the room that owns them reads it.</summary>
public static class ReadPapers
{
    /// <summary>Each paper with what it says; one that can no longer be read is left out.</summary>
    public static IEnumerable<(T Value, Paper Paper)> Read<T>(this IEnumerable<Paper> papers, TableReading<T> read)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(papers);
        ArgumentNullException.ThrowIfNull(read);
        foreach (var paper in papers)
        {
            if (read(paper.Json, out var value, out _))
            {
                yield return (value, paper);
            }
        }
    }
}
