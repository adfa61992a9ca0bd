using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tracing.Recall;

/// <summary>Casts the nets over the packages reached.</summary>
internal sealed class Nets(Book book, IReadOnlyList<RecallPackage> packages, IReadOnlyList<Belief> beliefs, RecallQuestion question, Instant asOf)
{
    private readonly double threshold = question.Threshold.Grams;

    public Net[] All() => [Cast(NetKind.Wide, p => p.Bound.IsPossible || p.Grams.Most > 0), Cast(NetKind.Union, p => p.Chance > 0), Cast(NetKind.Narrow, p => p.Chance > 0 && p.Chance >= question.Chance - 1e-12)];

    public NetPoint[] Curve() => [.. packages.Where(p => p.Chance > 0).Select(p => Math.Round(p.Chance, 9)).Distinct().OrderDescending().Select(Point)];

    private NetPoint Point(double chance)
    {
        var inside = packages.Where(p => p.Chance >= chance - 1e-9).ToArray();
        var outside = packages.Where(p => p.Chance < chance - 1e-9).ToArray();
        return new NetPoint(chance, inside.Length, Mass.FromGrams(inside.Sum(p => p.Mass.Grams)), Missing(outside), outside.Sum(p => p.Grams.Expected));
    }

    private Net Cast(NetKind kind, Func<RecallPackage, bool> takes)
    {
        var parts = packages.ToLookup(takes);
        RecallPackage[] inside = [.. parts[true]], outside = [.. parts[false]];
        var gone = Delivery.Of(book, inside.Select(p => p.Place.Id), asOf).Select(d => d.Customer).DistinctBy(p => p.Id);
        return new Net(kind, inside, PackageBalance.Of(book, inside.Select(p => p.Place.Id), asOf), [.. gone],
            inside.Sum(p => p.Grams.Expected), outside.Sum(p => p.Grams.Expected), Missing(outside), outside.Count(p => p.Bound.Most > threshold && p.Bound.IsPossible));
    }

    private double Missing(IReadOnlyList<RecallPackage> outside)
    {
        double missing = 0;
        for (var h = 0; h < beliefs.Count; h++)
        {
            missing += outside.Any(p => p.Grams.Each[h] > threshold) ? beliefs[h].Weight : 0;
        }

        return missing / beliefs.Sum(b => b.Weight);
    }
}
