namespace Evengrist.Plant.Imports;

/// <summary>Finds what somebody probably meant.</summary>
internal static class Nearest
{
    private const int LongestCompared = 40;

    /// <summary>The known word nearest to the one read, by letters to change; null where none is near.</summary>
    public static string? To(string read, IEnumerable<string> known)
    {
        var cut = read.Length > LongestCompared ? read[..LongestCompared] : read;
        var best = known.Select(k => (Word: k, Off: Distance(cut.ToLowerInvariant(), k.ToLowerInvariant()))).OrderBy(k => k.Off).FirstOrDefault();
        return best.Word is not null && best.Off <= Math.Max(2, best.Word.Length / 2) ? best.Word : null;
    }

    /// <summary>Letters to add, drop or change to turn one word into the other.</summary>
    private static int Distance(string a, string b)
    {
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var corner = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var change = corner + (a[i - 1] == b[j - 1] ? 0 : 1);
                corner = row[j];
                row[j] = Math.Min(change, 1 + Math.Min(row[j], row[j - 1]));
            }
        }

        return row[^1];
    }
}
