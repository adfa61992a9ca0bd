using NodaTime;

namespace Evengrist.Records;

/// <summary>One version of a contract as it was kept; what the JSON says is the business of Intake.</summary>
/// <param name="Code">What people call the contract.</param>
/// <param name="Version">From 1.</param>
/// <param name="Json">Its terms.</param>
/// <param name="By">Who kept it.</param>
/// <param name="Recorded">When.</param>
public sealed record Contract(string Code, int Version, string Json, string By, Instant Recorded);
