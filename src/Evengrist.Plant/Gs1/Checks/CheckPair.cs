using Evengrist.Packing.Codes;

namespace Evengrist.Plant.Gs1.Checks;

/// <summary>The check pair of alphanumeric keys: two of 32 characters behind the others.</summary>
/// <remarks>Sum of each character's place among the 82 times a prime, 2 for the rightmost, 3, 5, … to the left, modulo 1021; the pair writes its upper and lower five bits. Rule: GS1's reference test of this check.</remarks>
internal static class CheckPair
{
    private const string Pair = "23456789ABCDEFGHJKLMNPQRSTUVWXYZ";
    private const int Modulus = 1021;

    private static readonly int[] Primes = [.. Enumerable.Range(2, 510).Where(n => Enumerable.Range(2, n - 2).All(d => n % d != 0))];

    /// <summary>The pair that belongs behind a body; null where the body holds other characters or is longer than 97.</summary>
    public static string? Of(string body)
    {
        if (body.Length > Primes.Length || LabelCharacters.FirstOther(body) >= 0)
        {
            return null;
        }

        var sum = 0;
        for (var i = 0; i < body.Length; i++)
        {
            sum = (sum + (LabelCharacters.All.IndexOf(body[i], StringComparison.Ordinal) * Primes[body.Length - 1 - i])) % Modulus;
        }

        return $"{Pair[sum >> 5]}{Pair[sum & 31]}";
    }

    public static string? Expected(string part) => part.Length < 2 ? "at least the two characters of its check"
        : Of(part[..^2]) is not { } right ? "at most 97 of the 82 characters and their check pair"
        : part.EndsWith(right, StringComparison.Ordinal) ? null : $"check characters {right} at the end, not {Fault.Show(part[^2..])}; read it again";
}
