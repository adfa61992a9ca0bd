using Evengrist.Laboratory.Specifications;
using NodaTime;

namespace Evengrist.Records.Laboratory;

/// <summary>A specification that is kept, in one version.</summary>
/// <param name="Version">Its version, from 1.</param>
/// <param name="By">Who kept it.</param>
/// <param name="Recorded">When.</param>
/// <param name="Specification">What it says.</param>
public sealed record KeptSpecification(int Version, string By, Instant Recorded, Specification Specification)
{
    /// <summary>Its code and version: <c>WB-ORLAWICK version 2</c>.</summary>
    public string Title => $"{Specification.Code} version {Version}";
}
