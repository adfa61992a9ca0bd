using Evengrist.Milling.OnPaper;
using NodaTime;

namespace Evengrist.Records.Milling;

/// <summary>A trial on paper that is kept, in one version.</summary>
/// <param name="Version">Its version, from 1.</param>
/// <param name="By">Who kept it.</param>
/// <param name="Recorded">When.</param>
/// <param name="Paper">The trial.</param>
public sealed record KeptTrial(int Version, string By, Instant Recorded, MillTrialPaper Paper)
{
    /// <summary>Whether it stands: it was not struck.</summary>
    public bool Stands => Paper.Struck is null;
}
