using Evengrist.Ledger;
using Evengrist.Records.Mix;
using Evengrist.Season;
using NodaTime;

namespace Evengrist.Records.Season;

/// <summary>What a plan meant to draw from a bin up to a moment, and what was drawn.</summary>
/// <param name="Bin">Code of the bin.</param>
/// <param name="WheatClass">Its class.</param>
/// <param name="PlannedTonnes">By the plan, t; a period under way counts by its elapsed part.</param>
/// <param name="DrawnTonnes">By the ledger, t.</param>
public sealed record PlanAgainstFact(string Bin, string WheatClass, double PlannedTonnes, double DrawnTonnes)
{
    /// <summary>Drawn less planned, t.</summary>
    public double Difference => DrawnTonnes - PlannedTonnes;

    /// <summary>Every bin the plan draws from or grain was drawn from, by code.</summary>
    /// <param name="view">The ledger.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="at">The moment up to which both count; not before the plan's first day.</param>
    /// <param name="zone">The mill's time zone.</param>
    public static IReadOnlyList<PlanAgainstFact> Of(MillView view, SeasonPlan plan, Instant at, DateTimeZone zone)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(zone);
        Instant Begin(LocalDate day) => zone.AtStartOfDay(day).ToInstant();
        var begun = Begin(plan.Spec.Start);
        var elapsed = plan.Spec.Periods.Select(p => Math.Clamp((at - Begin(p.Start)) / (Begin(p.End) - Begin(p.Start)), 0, 1)).ToArray();
        var homes = plan.Spec.AllWheats.ToDictionary(w => w.Code, w => w.Home.Length > 0 ? w.Home : w.Code);
        var planned = plan.Uses.GroupBy(u => homes[u.Wheat], StringComparer.OrdinalIgnoreCase).ToDictionary(g => g.Key, g => g.Sum(u => u.Tonnes * elapsed[u.Period]), StringComparer.OrdinalIgnoreCase);
        var bins = view.Book.OfKind(PlaceKind.Bin).ToArray();
        var rows = bins.Select(b => new PlanAgainstFact(b.Code, b.Material, planned.GetValueOrDefault(b.Code), Drawn(view.Book, b.Id, begun, at)));
        var classes = plan.Spec.AllWheats.ToDictionary(w => w.Code, w => w.WheatClass);
        var others = planned.Where(p => !bins.Any(b => b.Code.Equals(p.Key, StringComparison.OrdinalIgnoreCase))).Select(p => new PlanAgainstFact(p.Key, classes.GetValueOrDefault(p.Key, ""), p.Value, 0));
        return [.. rows.Concat(others).Where(r => r.PlannedTonnes > 0.5 || r.DrawnTonnes > 0.5).OrderBy(r => r.Bin, StringComparer.OrdinalIgnoreCase)];
    }

    private static double Drawn(Book book, PlaceId bin, Instant from, Instant to) => BinDraws.Of(book, bin, from, to).Sum(m => m.TonnesWithin(from, to));
}
