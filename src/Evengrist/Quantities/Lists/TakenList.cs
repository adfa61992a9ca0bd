namespace Evengrist.Quantities.Lists;

/// <summary>A list as it is taken out of the program: named columns and rows, made anew while they are read.</summary>
/// <param name="Name">Short name: small letters and hyphens; the name of the file.</param>
/// <param name="Title">What it is, in words.</param>
/// <param name="Columns">At least one.</param>
/// <param name="Rows">Each with a value or null for every column, of the type that the column says. Read once, from first to last.</param>
public sealed record TakenList(string Name, string Title, IReadOnlyList<ListColumn> Columns, IEnumerable<IReadOnlyList<object?>> Rows);
