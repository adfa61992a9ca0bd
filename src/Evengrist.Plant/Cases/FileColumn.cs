namespace Evengrist.Plant.Cases;

/// <summary>A column of a file that has one row for each figure.</summary>
/// <param name="Name">Its heading.</param>
/// <param name="Unit">Its unit; empty for none. It may stand behind the heading in square brackets, and is then checked.</param>
/// <param name="IsNeeded">Whether the heading has to be there.</param>
/// <param name="Words">What goes into it.</param>
public sealed record FileColumn(string Name, string Unit, bool IsNeeded, string Words);
