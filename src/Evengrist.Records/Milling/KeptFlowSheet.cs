using Evengrist.Milling.Sheet;
using NodaTime;

namespace Evengrist.Records.Milling;

/// <summary>A flow sheet that is kept, in one version.</summary>
/// <param name="Unit">Code of the mill unit.</param>
/// <param name="Version">Its version, from 1.</param>
/// <param name="By">Who kept it.</param>
/// <param name="Recorded">When.</param>
/// <param name="Reason">Why.</param>
/// <param name="Sheet">The sheet.</param>
public sealed record KeptFlowSheet(string Unit, int Version, string By, Instant Recorded, string Reason, FlowSheet Sheet);
