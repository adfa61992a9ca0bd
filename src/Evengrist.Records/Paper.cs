using NodaTime;

namespace Evengrist.Records;

/// <summary>One version of a standing arrangement as it was kept: a contract, a certificate, the shape of a bin. What the JSON says is the business of a room.</summary>
/// <param name="Code">What people call it within its kind.</param>
/// <param name="Version">From 1.</param>
/// <param name="Json">What it says.</param>
/// <param name="By">Who kept it.</param>
/// <param name="Recorded">When.</param>
public sealed record Paper(string Code, int Version, string Json, string By, Instant Recorded);
