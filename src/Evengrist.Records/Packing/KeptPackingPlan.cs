using Evengrist.Packing.Boards;
using NodaTime;

namespace Evengrist.Records.Packing;

/// <summary>A plan of the packing hall that is kept, in one version.</summary>
/// <param name="Version">Its version, from 1.</param>
/// <param name="By">Who kept it.</param>
/// <param name="Recorded">When.</param>
/// <param name="Plan">What it says.</param>
public sealed record KeptPackingPlan(int Version, string By, Instant Recorded, PackingPlan Plan);
