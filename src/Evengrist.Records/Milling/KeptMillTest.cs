using Evengrist.Milling.Learning;
using NodaTime;

namespace Evengrist.Records.Milling;

/// <summary>A mill test that is kept, in one version.</summary>
/// <param name="Code">What it is called.</param>
/// <param name="Version">Its version, from 1.</param>
/// <param name="By">Who kept it.</param>
/// <param name="Recorded">When.</param>
/// <param name="Paper">The test.</param>
public sealed record KeptMillTest(string Code, int Version, string By, Instant Recorded, MillTestPaper Paper)
{
    /// <summary>Whether it counts: it was not struck.</summary>
    public bool Stands => Paper.Struck is null;

    /// <summary>How many figures were measured.</summary>
    public int Figures => Paper.Releases.Count + Paper.Sieves.Count + Paper.Streams.Sum(s => 1 + (s.AshPercent is null ? 0 : 1) + (s.ProteinPercent is null ? 0 : 1));
}
