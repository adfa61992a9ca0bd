using System.Text;
using Evengrist.Plant.Gs1.Table;

namespace Evengrist.Plant.Gs1;

/// <summary>Elements as one or more symbols of an item carry them. See docs/model/codes.md.</summary>
/// <param name="Elements">The elements, in the order in which they stand.</param>
public sealed record ElementString(IReadOnlyList<Element> Elements)
{
    /// <summary>The separator behind a value whose length is not known beforehand, as scanners send it.</summary>
    public const char Separator = '\u001d';

    /// <summary>The value of an identifier; null where it does not stand there.</summary>
    public string? this[string code] => Elements.FirstOrDefault(e => e.Code == code)?.Value;

    /// <summary>Checks elements, and puts those of a predefined length first so that as few separators as can be are needed.</summary>
    /// <param name="pairs">Identifiers and values.</param>
    /// <param name="year">This year, for the century of dates.</param>
    /// <param name="whole">Whether these are all elements of the item: then what belongs together has to be there.</param>
    public static Parsed<ElementString> Make(IReadOnlyList<(string Code, string Value)> pairs, int year, bool whole = true)
    {
        ArgumentNullException.ThrowIfNull(pairs);
        var faults = new List<Fault>();
        var elements = new List<Element>();
        foreach (var (code, value) in pairs)
        {
            if (!Identifiers.TryFind(code, out var identifier))
            {
                faults.Add(Fault.AtPath($"({code})", code, "an application identifier of GS1's table, such as 01 or 10"));
                continue;
            }

            faults.AddRange(Values.Faults(identifier, value, year).Select(f => Fault.AtPath(identifier.ToString(), f.Read, f.Expected)));
            elements.Add(new Element(identifier, value));
        }

        if (pairs.Count == 0)
        {
            faults.Add(Fault.OfFile("", "at least one element, such as (01) with the number of the item"));
        }

        if (faults.Count == 0)
        {
            faults.AddRange(Companions.Faults(elements, whole).Select(f => Fault.AtPath(f.Of.Identifier.ToString(), f.Of.Value, f.Expected)));
        }

        return faults.Count > 0 ? Parsing.Failed<ElementString>(faults) : Parsing.Got(new ElementString([.. elements.DistinctBy(e => e.Code).OrderBy(e => e.Identifier.IsPredefined ? 0 : 1)]));
    }

    /// <summary>The characters a scanner sends behind the symbology identifier.</summary>
    public string Transmitted()
    {
        var text = new StringBuilder();
        foreach (var (n, element) in Elements.Index())
        {
            text.Append(element.Code).Append(element.Value);
            if (n < Elements.Count - 1 && !element.Identifier.IsPredefined)
            {
                text.Append(Separator);
            }
        }

        return text.ToString();
    }

    /// <summary>The line for people, identifiers in brackets.</summary>
    public override string ToString() => string.Concat(Elements);
}
