namespace Evengrist.Web.Sights;

/// <summary>Which pattern stands for which district on one page: in the order of the alphabet, so that a page looks the same tomorrow.</summary>
public sealed class Legend(IEnumerable<string> origins)
{
    /// <summary>Patterns there are; an eleventh district shares the first one's.</summary>
    public const int Patterns = 10;

    /// <summary>The districts in order.</summary>
    public IReadOnlyList<string> Origins { get; } = [.. origins.Distinct().Order(StringComparer.Ordinal)];

    /// <summary>The pattern of a district, from 0.</summary>
    public int Index(string origin) => Math.Max(0, Origins.ToList().IndexOf(origin)) % Patterns;
}
