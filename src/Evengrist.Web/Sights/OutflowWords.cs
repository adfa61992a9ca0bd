using Evengrist.Ledger;

namespace Evengrist.Web.Sights;

/// <summary>The hypotheses in words, and as they stand in an address.</summary>
public static class OutflowWords
{
    /// <summary>All of them, in the order they are shown.</summary>
    public static IReadOnlyList<Outflow> All { get; } = [Outflow.FirstInFirstOut, Outflow.CoreFirst, Outflow.Stirred];

    /// <summary><c>core first</c>.</summary>
    public static string Words(this Outflow outflow) => outflow switch
    {
        Outflow.CoreFirst => "core first",
        Outflow.Stirred => "stirred",
        _ => "first in, first out",
    };

    /// <summary>As it stands in an address: <c>fifo</c>, <c>core</c>, <c>stirred</c>.</summary>
    public static string Code(this Outflow outflow) => outflow switch
    {
        Outflow.CoreFirst => "core",
        Outflow.Stirred => "stirred",
        _ => "fifo",
    };

    /// <summary>What it supposes, in a sentence.</summary>
    public static string Sentence(this Outflow outflow) => outflow switch
    {
        Outflow.CoreFirst => "The grain over the outlet leaves first, then the surface from the top down.",
        Outflow.Stirred => "What leaves is the mean of all that lies in the bin.",
        _ => "What was filled in first leaves first.",
    };

    /// <summary>Reads the code of an address; null where it is none.</summary>
    public static Outflow? Read(string? code) => All.Where(o => o.Code() == code).Select(o => (Outflow?)o).FirstOrDefault();
}
