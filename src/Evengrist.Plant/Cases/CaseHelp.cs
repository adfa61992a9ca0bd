namespace Evengrist.Plant.Cases;

/// <summary>What a posed case looks like, to be printed beside the verb that reads it.</summary>
/// <param name="Schema">Its members, in words.</param>
/// <param name="Example">A case that works.</param>
public sealed record CaseHelp(string Schema, string Example);
