using Evengrist.Quantities.Lists;

namespace Evengrist.Records.Lists;

/// <summary>A list of the mill that can be taken out.</summary>
/// <param name="Name">Short name, small letters and hyphens.</param>
/// <param name="Title">What it is, in words.</param>
/// <param name="Take">Makes it; the rows may be read after it returns, without keeping the mill from others.</param>
public sealed record MillList(string Name, string Title, Func<Mill, ListAsk, TakenList> Take)
{
    /// <summary>A list whose columns stand, of rows that the mill is asked for.</summary>
    internal static MillList Of<T>(string name, string title, ListOf<T> columns, Func<Mill, ListAsk, IEnumerable<T>> rows) =>
        new(name, title, (mill, ask) => columns.List(name, title, rows(mill, ask)));
}
