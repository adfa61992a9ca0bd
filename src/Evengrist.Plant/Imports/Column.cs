namespace Evengrist.Plant.Imports;

/// <summary>A column a file may have: its name, whether it must be there, and how its heading is written.</summary>
/// <param name="Name">Name in lower case, as in the heading.</param>
/// <param name="Required">Whether a file without it is refused, and a row with an empty cell in it.</param>
/// <param name="Meaning">What goes into it, for the documentation.</param>
public abstract record Column(string Name, bool Required, string Meaning)
{
    /// <summary>Every way to write the heading; the first is the usual one.</summary>
    public abstract IReadOnlyList<string> Headings { get; }

    /// <summary>Whether its cells are numbers, so that the decimal mark matters.</summary>
    public virtual bool IsNumeric => true;

    /// <summary>Whether the unit in the brackets (null for no brackets) will do.</summary>
    public abstract bool Takes(string? unit);
}
