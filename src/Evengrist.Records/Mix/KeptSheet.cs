using Evengrist.Mix.Sheets;
using NodaTime;

namespace Evengrist.Records.Mix;

/// <summary>A mix sheet that is kept, in one version.</summary>
/// <param name="Code">Its code: mix line and beginning as it was first kept.</param>
/// <param name="Version">Its version, from 1.</param>
/// <param name="By">Who recorded it.</param>
/// <param name="Recorded">When.</param>
/// <param name="Sheet">The sheet.</param>
public sealed record KeptSheet(string Code, int Version, string By, Instant Recorded, MixSheet Sheet);
