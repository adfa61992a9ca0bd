using Evengrist.Mix.Relations;
using NodaTime;

namespace Evengrist.Records.Mix;

/// <summary>A relation of flour to wheat that is kept, in one version.</summary>
/// <param name="Version">Its version, from 1.</param>
/// <param name="By">Who kept it.</param>
/// <param name="Recorded">When.</param>
/// <param name="Relation">The relation.</param>
public sealed record KeptRelation(int Version, string By, Instant Recorded, MillRelation Relation);
