namespace Evengrist.Intake.Grading;

/// <summary>A part of a standard and where it was read.</summary>
/// <param name="Part">Which part: the grade table, the classes, the recording rule …</param>
/// <param name="Source">The document.</param>
/// <param name="Mark">How well it is known here.</param>
/// <param name="Says">The rule in a sentence; empty where the tables say it.</param>
public sealed record StandardPart(string Part, string Source, SourceMark Mark = SourceMark.Read, string Says = "");
