using Evengrist.Plant.Gs1.Checks;

namespace Evengrist.Plant.Gs1.Table;

/// <summary>One part of a value: parts follow each other without a mark between them, and only the last may be of no fixed length.</summary>
/// <param name="Set">Which characters.</param>
/// <param name="Least">The fewest characters.</param>
/// <param name="Most">The most characters.</param>
/// <param name="MayLack">Whether it may be missing, with all that follow it.</param>
/// <param name="Checks">What it has to fulfil besides.</param>
public sealed record Part(CharacterSet Set, int Least, int Most, bool MayLack, IReadOnlyList<PartCheck> Checks);
