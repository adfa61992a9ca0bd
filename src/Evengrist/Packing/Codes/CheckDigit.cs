namespace Evengrist.Packing.Codes;

/// <summary>The check digit of a numeric GS1 key: modulo 10 with weights 3 and 1 by turns from the right.</summary>
/// <remarks>
/// <para>c = (10 − Σ dᵢ·wᵢ mod 10) mod 10; w is 3 for the rightmost digit before the check digit, then 1, 3, … The same for GTIN of every length, SSCC, GLN and the body of a GDTI.</para>
/// <para>Finds every single wrong digit. Two neighbours that changed places are not found where they differ by five (05 and 50, 16 and 61, …).</para>
/// <para>Source: gs1.org, page "Check digit calculator"; what it does not find is derived.</para>
/// </remarks>
public static class CheckDigit
{
    /// <summary>The check digit that belongs behind a body.</summary>
    /// <param name="body">Digits without the check digit; may be empty, which gives 0.</param>
    /// <exception cref="ArgumentException">A character is no digit 0 to 9.</exception>
    public static char Of(ReadOnlySpan<char> body)
    {
        var sum = 0;
        for (var i = 0; i < body.Length; i++)
        {
            if (!char.IsAsciiDigit(body[i]))
            {
                throw new ArgumentException("A check digit is of digits alone.", nameof(body));
            }

            sum = (sum + ((body[i] - '0') * ((body.Length - i) % 2 == 0 ? 1 : 3))) % 10;
        }

        return (char)('0' + ((10 - sum) % 10));
    }

    /// <summary>Whether the last digit is the check digit of those before it; false where a character is no digit, or there is none.</summary>
    public static bool IsRight(ReadOnlySpan<char> key) => key.Length > 0 && !key.ContainsAnyExceptInRange('0', '9') && Of(key[..^1]) == key[^1];

    /// <summary>A body with its check digit.</summary>
    /// <exception cref="ArgumentException">A character is no digit 0 to 9.</exception>
    public static string Complete(string body)
    {
        ArgumentNullException.ThrowIfNull(body);
        return body + Of(body);
    }

    // Why a typed key of one of these lengths cannot be taken; null where it can.
    internal static string? Refusal(string key, string name, params ReadOnlySpan<int> lengths)
    {
        if (key.AsSpan().ContainsAnyExceptInRange('0', '9'))
        {
            return $"A {name} is of digits alone.";
        }

        if (!lengths.Contains(key.Length))
        {
            return FormattableString.Invariant($"A {name} has {string.Join(", ", lengths[..^1].ToArray())}{(lengths.Length > 1 ? " or " : "")}{lengths[^1]} digits, not {key.Length}.");
        }

        return IsRight(key) ? null : $"The check digit of this {name} is wrong: {key[^1]} stands where {Of(key.AsSpan(0, key.Length - 1))} belongs. Read it again.";
    }
}
