namespace Evengrist.Records.Tracing;

/// <summary>What became of a document of other people's events.</summary>
/// <param name="Added">Events not known before.</param>
/// <param name="DeclaredWrong">Events known before that the document declares to be in error.</param>
/// <param name="AlreadyKnown">Events known before, from this or another document.</param>
/// <param name="NeverSeen">Of those added, events that are declared to be in error though nobody had told them.</param>
public sealed record EventsTaken(int Added, int DeclaredWrong, int AlreadyKnown, int NeverSeen = 0);
