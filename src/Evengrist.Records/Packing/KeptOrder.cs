using Evengrist.Packing.Orders;
using NodaTime;

namespace Evengrist.Records.Packing;

/// <summary>An order that is kept, in one version.</summary>
/// <param name="Version">Its version, from 1.</param>
/// <param name="By">Who kept it.</param>
/// <param name="Recorded">When.</param>
/// <param name="Order">What it says.</param>
public sealed record KeptOrder(int Version, string By, Instant Recorded, PackingOrder Order);
