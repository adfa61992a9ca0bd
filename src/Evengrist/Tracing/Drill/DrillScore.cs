using NodaTime;

namespace Evengrist.Tracing.Drill;

/// <summary>How a drill went.</summary>
/// <param name="SecondsBack">From a package to its roots; s.</param>
/// <param name="SecondsForward">From the subject to the list; s.</param>
/// <param name="Listed">Packages of the list (the net taken).</param>
/// <param name="ListedKilograms">Their whole mass, kg.</param>
/// <param name="Recounted">Packages that by the recount hold more than the threshold under any hypothesis.</param>
/// <param name="Missed">Codes of those that are not in the list; the first few.</param>
/// <param name="Completeness">Recounted packages in the list, of all recounted; 0 to 1, 1 where there is none.</param>
/// <param name="Precision">Mass of listed packages that by the recount hold a gram or more under the hypothesis believed most, of all listed; 0 to 1, 1 where nothing is listed.</param>
/// <param name="GreatestDifferenceGrams">Greatest difference of a package between list and recount under any hypothesis; g.</param>
/// <param name="Consignees">Customers to tell.</param>
/// <param name="AccountedForPercent">Balance of the listed packages, 100·(B + C + D)/A; null where none is listed.</param>
public sealed record DrillScore(
    double SecondsBack, double SecondsForward, int Listed, decimal ListedKilograms, int Recounted, IReadOnlyList<string> Missed, double Completeness, double Precision,
    double GreatestDifferenceGrams, int Consignees, decimal? AccountedForPercent = null)
{
    /// <summary>Hours in which a full trace both ways with its balance is demanded by certification practice [legalclarity.org; sample procedure of clause 3.9.2].</summary>
    public const int CertificationHours = 4;

    /// <summary>Hours in which records are to be shown on official request [21 CFR 1.361].</summary>
    public const int LegalHours = 24;

    /// <summary>Whether a clock stayed within so many hours.</summary>
    public static bool Within(Duration clock, int hours) => clock <= Duration.FromHours(hours);
}
