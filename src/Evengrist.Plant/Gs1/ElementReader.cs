using Evengrist.Plant.Gs1.Table;

namespace Evengrist.Plant.Gs1;

/// <summary>Reads elements from the left and keeps every fault with its place.</summary>
internal sealed class ElementReader(int year)
{
    private readonly List<Element> elements = [];
    private readonly List<int> places = [];
    private readonly List<Fault> faults = [];

    /// <summary>Reads what a scanner sends.</summary>
    public void Transmitted(string text, int at)
    {
        while (at < text.Length)
        {
            if (!Identifiers.TryBegin(text.AsSpan(at), out var identifier))
            {
                faults.Add(Fault.AtCharacter(at + 1, "", text[at..], elements.Count == 0
                    ? "an application identifier first, such as 01" : "an application identifier; what follows cannot be told apart without one, and a length before it may be wrong"));
                return;
            }

            var begin = at + identifier.Code.Length;
            var separator = text.IndexOf(ElementString.Separator, begin);
            var end = separator < 0 ? text.Length : separator;
            end = identifier.IsPredefined ? Math.Min(end, begin + identifier.Most) : end;
            Take(identifier, text[begin..end], at, begin);
            at = end < text.Length && text[end] == ElementString.Separator ? end + 1 : end;
        }
    }

    /// <summary>Reads the line for people.</summary>
    public void Bracketed(string text, int at)
    {
        while (at < text.Length)
        {
            if (Brackets.At(text, at) is not { } identifier)
            {
                faults.Add(Fault.AtCharacter(at + 1, "", text[at..], "an application identifier in brackets, such as (01)"));
                return;
            }

            var begin = at + identifier.Code.Length + 2;
            var (value, end) = Brackets.Value(text, begin);
            Take(identifier, value, at, begin);
            at = end;
        }
    }

    /// <summary>What came of it.</summary>
    public Parsed<ElementString> Close(string text, bool whole)
    {
        if (elements.Count == 0 && faults.Count == 0)
        {
            faults.Add(Fault.AtCharacter(1, "", text, "at least one element, such as 0109521234002017 or (01)09521234002017"));
        }

        if (faults.Count == 0)
        {
            var first = elements.Select((e, n) => (e, n)).GroupBy(p => p.e).ToDictionary(g => g.Key, g => places[g.First().n]);
            faults.AddRange(Companions.Faults(elements, whole).Select(f => Fault.AtCharacter(first[f.Of] + 1, f.Of.Identifier.ToString(), f.Of.Value, f.Expected)));
        }

        return faults.Count > 0 ? Parsing.Failed<ElementString>(faults) : Parsing.Got(new ElementString(elements));
    }

    private void Take(ApplicationIdentifier identifier, string value, int at, int begin)
    {
        faults.AddRange(Values.Faults(identifier, value, year).Select(f => Fault.AtCharacter(begin + f.Offset + 1, identifier.ToString(), f.Read, f.Expected)));
        elements.Add(new Element(identifier, value));
        places.Add(at);
    }
}
