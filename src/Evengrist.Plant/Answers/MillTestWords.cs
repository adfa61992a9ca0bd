using System.Globalization;
using Evengrist.Milling.Learning;

namespace Evengrist.Plant.Answers;

/// <summary>A mill test in words.</summary>
public static class MillTestWords
{
    /// <summary>What it holds: "10 releases, 27 streams".</summary>
    public static string Holds(MillTestPaper paper)
    {
        ArgumentNullException.ThrowIfNull(paper);
        (int Count, string One)[] parts = [(paper.Releases.Count, "release"), (paper.Sieves.Count, "sieve"), (paper.Streams.Count, "stream")];
        return string.Join(", ", parts.Where(p => p.Count > 0).Select(p => $"{p.Count} {p.One}{(p.Count == 1 ? "" : "s")}"));
    }

    /// <summary>How the mill was set otherwise than its flow sheet says; empty where it was not.</summary>
    public static IReadOnlyList<string> Settings(MillTestPaper paper)
    {
        ArgumentNullException.ThrowIfNull(paper);
        return
        [
            .. paper.Set.GapMicrometres.Select(g => N($"{g.Key} gap {g.Value:0.#} µm")), .. paper.Set.AirMetresPerSecond.Select(a => N($"{a.Key} air {a.Value:0.##} m/s")),
            .. paper.Set.Cloths.Select(c => N($"{c.Passage} cloth {c.ToMicrometres:0.#} µm for {c.FromMicrometres:0.#}")), .. paper.Set.Outlets.Select(o => N($"{o.Passage} outlet {o.Outlet} to {string.Join(" + ", o.To.Select(s => s.To))}")),
        ];
    }

    private static string N(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
