using Evengrist.Plant.Gs1.Table;

namespace Evengrist.Plant.Gs1;

/// <summary>Which elements have to stand together on an item, and which must not. Asked of all symbols of the item together.</summary>
internal static class Companions
{
    /// <summary>What is missing or too much, each with the element that asks.</summary>
    /// <param name="elements">The elements.</param>
    /// <param name="whole">Whether they are all of the item; else only what stands twice is looked at.</param>
    public static IEnumerable<(Element Of, string Expected)> Faults(IReadOnlyList<Element> elements, bool whole)
    {
        var there = new Dictionary<string, string>();
        foreach (var element in elements)
        {
            if (!there.TryAdd(element.Code, element.Value) && there[element.Code] != element.Value)
            {
                yield return (element, $"the same value wherever {element.Identifier} stands, not also \"{Fault.Show(there[element.Code])}\"");
            }
        }

        foreach (var element in whole ? elements.DistinctBy(e => e.Code) : [])
        {
            var identifier = element.Identifier;
            if (identifier.Needs.Count > 0 && !identifier.Needs.Any(group => group.All(Stands)))
            {
                yield return (element, $"{string.Join(", or ", identifier.Needs.Select(g => string.Join(" with ", g.Select(p => $"({p})"))))} beside {identifier} ({identifier.Words}), on this symbol or another of the item");
            }

            foreach (var code in identifier.Excludes.SelectMany(p => there.Keys.Where(c => c != identifier.Code && ApplicationIdentifier.Fits(p, c))).Distinct())
            {
                yield return (element, $"no ({code}) beside {identifier} ({identifier.Words})");
            }
        }

        bool Stands(string pattern) => pattern.Contains('n', StringComparison.Ordinal) ? there.Keys.Any(c => ApplicationIdentifier.Fits(pattern, c)) : there.ContainsKey(pattern);
    }
}
