using System.Globalization;

namespace Evengrist.Edge.Tests.Plant.Gs1;

/// <summary>Values that fulfil a row of GS1's table and values that do not, made from the row as GS1 writes it and without our own checks.</summary>
internal static class GoodValues
{
    // One that holds and those that do not, from the reference tests of GS1's repository (Apache-2.0) where they have such a case; the rest is plain from the rule's words.
    private static readonly Dictionary<string, (string Good, string[] Bad)> Of = new()
    {
        ["csumalpha"] = ("1987654Ad4X4bL5ttr2310c2K", ["1987654Ad4X4bL5ttr2310cXK", "1987654Ad4X4bL5ttr2310c2X"]),
        ["yymmd0"] = ("250315", ["250230", "251301", "250015", "230229"]),
        ["yymmdd"] = ("240229", ["250230", "250300", "251301"]),
        ["yyyymmdd"] = ("20240229", ["21000229", "20250300", "20251301"]),
        ["hhmi"] = ("2359", ["2400", "2360"]),
        ["hh"] = ("23", ["24"]),
        ["mi"] = ("59", ["60"]),
        ["ss"] = ("59", ["60"]),
        ["iso3166"] = ("840", ["999", "000"]),
        ["iso3166999"] = ("999", ["000", "998"]),
        ["iso3166alpha2"] = ("US", ["AA", "us", "12"]),
        ["iso4217"] = ("978", ["000", "001"]),
        ["iso5218"] = ("9", ["3", "8"]),
        ["pcenc"] = ("ABC%20XYZ", ["ABC%fgXYZ", "ABC%g", "ABC%"]),
        ["latitude"] = ("1800000000", ["1800000001"]),
        ["longitude"] = ("3600000000", ["3600000001"]),
        ["hyphen"] = ("-", ["X", "+"]),
        ["importeridx"] = ("_", ["!", "/"]),
        ["mediatype"] = ("80", ["00", "11", "79"]),
        ["nonzero"] = ("1", []),
        ["nozeroprefix"] = ("12", ["012"]),
        ["zero"] = ("0", ["1"]),
        ["winding"] = ("9", ["2", "8"]),
        ["yesno"] = ("1", ["2"]),
        ["packagetype"] = ("BG", ["00", "9_", "B"]),
        ["pieceoftotal"] = ("0203", ["0001", "0100", "0908"]),
        ["posinseqslash"] = ("1/3", ["2/1", "0/1", "1/0", "1//", "123"]),
        ["iban"] = ("GB98MIDL07009312345678", ["GB98MIDL07009312345679", "XX361234567890", "BE71", "BE71096123456760"]),
        ["couponcode"] = ("012345612345611110123", ["0123456", "01234561234560", "0123456123456111101230", "012345612345611115123", "7123456789012312345611110123"]),
        ["couponposoffer"] = ("001234561234560123456", ["201234561234560123456", "07", "0012345612345601234567", "001234561234561123456"]),
    };

    /// <summary>A value that fulfils a part such as <c>N14,csum,gcppos2</c>.</summary>
    public static string Good(string part)
    {
        var (letter, most, isFixed, checks) = Read(part);
        if (checks.Contains("csum"))
        {
            var body = "952123400000000001"[..(most - 1)];
            return body + Check(body);
        }

        if (checks.Select(c => Of.TryGetValue(c, out var known) ? known.Good : null).FirstOrDefault(v => v is not null) is { } value)
        {
            return isFixed && value.Length < most ? value.PadLeft(most, value[0]) : value;
        }

        return letter switch { 'N' => new string('1', isFixed ? most : Math.Min(most, 2)), 'Z' => "AB_-", 'X' or 'Y' => isFixed ? new string('A', most) : "1234A"[..Math.Min(most, 5)], _ => throw new InvalidOperationException(part) };
    }

    /// <summary>Values of the right length and characters that a check of the part refuses; empty where the part has no check that could.</summary>
    public static IEnumerable<string> Bad(string part)
    {
        var (letter, most, isFixed, checks) = Read(part);
        if (checks.Contains("csum"))
        {
            var good = Good(part);
            yield return good[..^1] + (char)('0' + ((good[^1] - '0' + 1) % 10));
        }

        if (checks.Contains("nonzero"))
        {
            yield return new string('0', most);
        }

        if (letter != 'N' && checks.Contains("gcppos1") && !checks.Contains("csumalpha"))
        {
            yield return "123A5";
            yield return "123";
        }

        foreach (var bad in checks.SelectMany(c => Of.TryGetValue(c, out var known) ? known.Bad : []).Where(b => b.Length <= most && (!isFixed || b.Length == most)))
        {
            yield return bad;
        }
    }

    /// <summary>A character that the part does not take.</summary>
    public static char Foreign(string part) => part.TrimStart('[')[0] switch { 'N' => 'A', 'X' => '#', 'Y' => 'a', _ => '+' };

    public static (char Letter, int Most, bool IsFixed, string[] Checks) Read(string part)
    {
        var words = part.Replace("[", "", StringComparison.Ordinal).Replace("]", "", StringComparison.Ordinal).Split(',');
        return (words[0][0], int.Parse(words[0].TrimStart('N', 'X', 'Y', 'Z', '.'), CultureInfo.InvariantCulture), !words[0].Contains('.', StringComparison.Ordinal), words[1..]);
    }

    // The published formula, written a second time.
    private static char Check(string body)
    {
        var sum = body.Reverse().Select((c, i) => (c - '0') * (i % 2 == 0 ? 3 : 1)).Sum();
        return (char)('0' + ((10 - (sum % 10)) % 10));
    }
}
