namespace Evengrist.Plant.Gs1.Checks;

/// <summary>International bank account numbers: country, two check digits, account; modulo 97 gives 1 (ISO 13616-1, ISO/IEC 7064).</summary>
internal static class Iban
{
    private const int Shortest = 11;

    public static string? Expected(string part)
    {
        if (part.Length < Shortest || !part.All(c => char.IsAsciiDigit(c) || char.IsAsciiLetterUpper(c)))
        {
            return "a bank account of at least 11 capitals and digits";
        }

        if (!Countries.IsLetters(part[..2]))
        {
            return "a bank account that begins with the two letters of a country";
        }

        var rest = 0;
        foreach (var c in part[4..] + part[..4])
        {
            rest = char.IsAsciiDigit(c) ? ((rest * 10) + c - '0') % 97 : ((rest * 100) + c - 'A' + 10) % 97;
        }

        return rest == 1 ? null : "a bank account whose check digits (third and fourth) agree with it; read it again";
    }
}
