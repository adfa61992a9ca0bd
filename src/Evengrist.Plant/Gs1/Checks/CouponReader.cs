namespace Evengrist.Plant.Gs1.Checks;

/// <summary>Reads the fields of a coupon from the left, and keeps what was expected where the first did not hold.</summary>
internal sealed class CouponReader(string part)
{
    private int at;
    private string? expected = part.All(char.IsAsciiDigit) ? null : "a coupon of digits alone";

    /// <summary>Takes the mark of an optional field, if it stands next.</summary>
    public bool Option(char mark)
    {
        if (expected is not null || at >= part.Length || part[at] != mark)
        {
            return false;
        }

        at++;
        return true;
    }

    public void OneOf(string digits, string words)
    {
        if (expected is null && (at >= part.Length || !digits.Contains(part[at], StringComparison.Ordinal)))
        {
            Fail($"a coupon whose {words} is one of {string.Join(' ', digits.AsEnumerable())}");
        }

        at++;
    }

    public string Skip(int length, string words)
    {
        if (expected is null && part.Length - at < length)
        {
            Fail($"a coupon with {length} digits of its {words}");
        }

        at += length;
        return expected is null ? part[(at - length)..at] : "";
    }

    /// <summary>A digit that says how long the field is, less what every such field has.</summary>
    public string Measured(string lengths, int besides, string words)
    {
        OneOf(lengths, "length of the " + words);
        return expected is null ? Skip(part[at - 1] - '0' + besides, words) : "";
    }

    /// <summary>The same for a company prefix; 9 says that there is none.</summary>
    public void Prefix(string lengths, string words)
    {
        OneOf(lengths, "length of the " + words);
        if (expected is null && part[at - 1] != '9')
        {
            Skip(part[at - 1] - '0' + 6, words);
        }
    }

    public string Date(int year, string words)
    {
        var digits = Skip(6, words);
        if (expected is null && SymbolDate.Expected(digits, year, monthAlone: false) is not null)
        {
            Fail($"a coupon whose {words} is a date");
        }

        return digits;
    }

    public void Fail(string what) => expected ??= what;

    public string? End() => expected ?? (at == part.Length ? null : $"a coupon that ends after {at} digits");
}
