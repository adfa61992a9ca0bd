using NodaTime;

namespace Evengrist.Packing.Products;

/// <summary>The version of a label that may be printed on a product.</summary>
/// <param name="Version">What the version is called: <c>3</c>, <c>2025-07</c>.</param>
/// <param name="By">The named person who approved it.</param>
/// <param name="On">When.</param>
public sealed record ApprovedLabel(string Version, string By, Instant On)
{
    internal IEnumerable<string> Faults()
    {
        if (string.IsNullOrWhiteSpace(Version))
        {
            yield return "A label that is approved has a version: write which.";
        }

        if (string.IsNullOrWhiteSpace(By))
        {
            yield return "A label is approved by a named person: write who.";
        }
    }
}
