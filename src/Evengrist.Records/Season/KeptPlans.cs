using System.Globalization;
using Evengrist.Season;
using NodaTime;

namespace Evengrist.Records.Season;

/// <summary>Plans that people have kept: papers, one for each moment that was planned from, each keeping a new version.</summary>
/// <param name="Code">The moment planned from, as text.</param>
/// <param name="Version">Its version.</param>
/// <param name="By">Who kept it.</param>
/// <param name="Recorded">When.</param>
/// <param name="Plan">The plan.</param>
public sealed record KeptPlans(string Code, int Version, string By, Instant Recorded, SeasonPlan Plan)
{
    /// <summary>Kind of the papers.</summary>
    public const string Kind = "season-plan";

    /// <summary>The name of a kept plan in an address.</summary>
    public string Name => string.Create(CultureInfo.InvariantCulture, $"{Code}.{Version}");

    /// <summary>Keeps a plan.</summary>
    public static void Keep(Mill mill, SeasonPlan plan, Instant at, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(plan);
        var code = at.InZone(mill.Settings.Zone).LocalDateTime.ToString("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture);
        mill.Papers(Kind).KeepNext(code, SeasonJson.Write(plan with { Version = code }), by);
    }

    /// <summary>All that are kept and can be read, the newest moment first.</summary>
    public static IReadOnlyList<KeptPlans> All(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(Kind).All().Select(p => (Paper: p, Reads: SeasonJson.TryRead<SeasonPlan>(p.Json, out var plan, out _), plan)).Where(p => p.Reads)
            .Select(p => new KeptPlans(p.Paper.Code, p.Paper.Version, p.Paper.By, p.Paper.Recorded, p.plan!)).Reverse()];
    }
}
