using Evengrist.Packing.Products;
using NodaTime;

namespace Evengrist.Records.Packing;

/// <summary>A product that is kept, in one version.</summary>
/// <param name="Version">Its version, from 1.</param>
/// <param name="By">Who kept it.</param>
/// <param name="Recorded">When.</param>
/// <param name="Product">What it says.</param>
public sealed record KeptProduct(int Version, string By, Instant Recorded, Product Product);
