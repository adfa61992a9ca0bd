using Evengrist.Plant.Cases;
using Evengrist.Tracing;

namespace Evengrist.Plant.Answers;

/// <summary>One draw, from so many tonnes drawn to so many, and its lots.</summary>
/// <param name="FromTonnes">Drawn before it.</param>
/// <param name="UntilTonnes">Drawn with it.</param>
/// <param name="Lots">Tonnes of each lot in it.</param>
public sealed record OutflowDraw(decimal FromTonnes, decimal UntilTonnes, IReadOnlyList<LotTonnes> Lots)
{
    internal static OutflowDraw Of(decimal from, decimal until, RootsOutcome roots) => new(from, until, roots.Roots
        .OrderBy(r => r.Origin.Id)
        .Select(r =>
        {
            var each = roots.Beliefs.Select((b, h) => (b.Outflow, Tonnes: r.Share.Each[h] * (double)(until - from))).ToArray();
            return new LotTonnes(r.Origin.Name, each.ToDictionary(e => e.Outflow.Word(), e => e.Tonnes), each.Min(e => e.Tonnes), each.Max(e => e.Tonnes));
        }).ToArray());
}

/// <summary>Tonnes of one lot.</summary>
/// <param name="Lot">The lot.</param>
/// <param name="Tonnes">Under each hypothesis.</param>
/// <param name="Least">The least under any hypothesis asked.</param>
/// <param name="Most">The most under any hypothesis asked.</param>
public sealed record LotTonnes(string Lot, IReadOnlyDictionary<string, double> Tonnes, double Least, double Most);
