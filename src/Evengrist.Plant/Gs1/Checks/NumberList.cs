using System.Collections.Frozen;
using System.Globalization;

namespace Evengrist.Plant.Gs1.Checks;

/// <summary>Numbers of three digits written one after another, with a hyphen for those between two.</summary>
internal static class NumberList
{
    public static FrozenSet<string> Of(string written) => Words(written).SelectMany(Numbers).ToFrozenSet(StringComparer.Ordinal);

    public static string[] Words(string written) => written.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);

    private static IEnumerable<string> Numbers(string word)
    {
        var ends = word.Split('-').Select(e => int.Parse(e, CultureInfo.InvariantCulture)).ToArray();
        return Enumerable.Range(ends[0], ends[^1] - ends[0] + 1).Select(n => n.ToString("000", CultureInfo.InvariantCulture));
    }
}
