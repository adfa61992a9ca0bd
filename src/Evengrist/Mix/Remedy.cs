namespace Evengrist.Mix;

/// <summary>What would have to give for a mix to be possible.</summary>
/// <param name="What">What gives, in words.</param>
/// <param name="To">How far, in words.</param>
/// <param name="Steps">How many of its usual steps that is; what is least in all is sought.</param>
public sealed record Remedy(string What, string To, double Steps);
