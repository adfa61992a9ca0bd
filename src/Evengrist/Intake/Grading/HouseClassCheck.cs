using Evengrist.Ledger;

namespace Evengrist.Intake.Grading;

/// <summary>The rules a house class keeps as data.</summary>
internal static class HouseClassCheck
{
    private const int MostBands = 12;

    public static IEnumerable<string> Of(HouseClass house)
    {
        if (string.IsNullOrWhiteSpace(house.Code) || house.Version < 1)
        {
            yield return "A house class needs a code and a version from 1.";
        }

        if (house.Bands.Count is 0 or > MostBands || house.Bands.Any(string.IsNullOrWhiteSpace) || house.Bands.Distinct(StringComparer.OrdinalIgnoreCase).Count() < house.Bands.Count)
        {
            yield return $"A house class has from 1 to {MostBands} bands, best first, each with a name of its own.";
        }

        if (house.Limits.Count == 0)
        {
            yield return "A house class has at least one limit.";
        }

        if (house.OfficialClass.Length > 0 && UsWheat.Standard.FindClass(house.OfficialClass) is null)
        {
            yield return $"{UsWheat.Standard.Title} has no class \"{house.OfficialClass}\": leave officialClass out or name one.";
        }

        foreach (var fault in house.Limits.SelectMany(l => OfLimit(l, house.Bands.Count)))
        {
            yield return fault;
        }
    }

    private static IEnumerable<string> OfLimit(HouseLimit limit, int bands)
    {
        var name = limit.Factor.Words();
        if (!Readings.UnitsOf(limit.Factor).Contains(limit.Unit))
        {
            yield return $"{name} is not read in \"{limit.Unit}\"; write one of: {string.Join(", ", Readings.UnitsOf(limit.Factor))}.";
        }

        if (limit.Factor.NeedsBasis() != limit.Basis.IsStated)
        {
            yield return limit.Basis.IsStated ? $"{name} has no moisture basis: leave it out." : $"{name} needs a moisture basis: say dry, 12mb, 14mb or another.";
        }

        if (limit.Decimals is < 0 or > 6)
        {
            yield return $"{name} is recorded at 0 to 6 decimals; read {limit.Decimals}.";
        }

        if ((limit.AtLeast.Count > 0) == (limit.AtMost.Count > 0))
        {
            yield return $"{name}: give atLeast or atMost, one of the two; a window is two rows.";
            yield break;
        }

        var (limits, rises) = limit.AtLeast.Count > 0 ? (limit.AtLeast, false) : (limit.AtMost, true);
        if (limits.Count != bands)
        {
            yield return $"{name}: {limits.Count} limits for {bands} bands; give one for each, null for none.";
        }

        var known = limits.Select((l, i) => l ?? (i == 0 ? null : rises ? decimal.MaxValue : decimal.MinValue)).OfType<decimal>().ToArray();
        if (Enumerable.Range(1, Math.Max(0, known.Length - 1)).Any(i => rises ? known[i] < known[i - 1] : known[i] > known[i - 1]))
        {
            yield return $"{name}: a later band is stricter than an earlier one; the best band stands first.";
        }
    }
}
