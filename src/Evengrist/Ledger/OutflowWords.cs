namespace Evengrist.Ledger;

/// <summary>The hypotheses of how a bin empties in words, and as they stand in an address.</summary>
public static class OutflowWords
{
    /// <summary>All of them, in the order they are shown.</summary>
    public static IReadOnlyList<Outflow> All { get; } = [Outflow.FirstInFirstOut, Outflow.CoreFirst, Outflow.Stirred];

    /// <summary>In words: <c>core first</c>.</summary>
    /// <param name="outflow">The hypothesis.</param>
    public static string Words(this Outflow outflow) => outflow switch
    {
        Outflow.CoreFirst => "core first",
        Outflow.Stirred => "stirred",
        _ => "first in, first out",
    };

    /// <summary>As it stands in an address and on the command line: <c>fifo</c>, <c>core</c>, <c>stirred</c>.</summary>
    /// <param name="outflow">The hypothesis.</param>
    public static string Code(this Outflow outflow) => outflow switch
    {
        Outflow.CoreFirst => "core",
        Outflow.Stirred => "stirred",
        _ => "fifo",
    };

    /// <summary>What it supposes, in a sentence.</summary>
    /// <param name="outflow">The hypothesis.</param>
    public static string Sentence(this Outflow outflow) => outflow switch
    {
        Outflow.CoreFirst => "The grain over the outlet leaves first, then the surface from the top down.",
        Outflow.Stirred => "What leaves is the mean of all that lies in the bin.",
        _ => "What was filled in first leaves first.",
    };

    /// <summary>Reads the code of an address; null where it is none.</summary>
    /// <param name="code">As <see cref="Code"/> writes it.</param>
    public static Outflow? Read(string? code) => All.Where(o => o.Code() == code).Select(o => (Outflow?)o).FirstOrDefault();
}
