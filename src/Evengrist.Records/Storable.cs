using System.Buffers;
using Evengrist.Ledger;

namespace Evengrist.Records;

/// <summary>Text that both engines can keep and give back unchanged, and that is not absurdly long.</summary>
internal static class Storable
{
    private const int MostInAKey = 200, MostInAText = 10_000;
    private static readonly SearchValues<char> Suspects = SearchValues.Create(['\0', .. Enumerable.Range(0xD800, 0x800).Select(c => (char)c)]);

    /// <exception cref="LedgerRefusal">A text cannot be kept.</exception>
    public static void Demand(IReadOnlyList<Draft> drafts, string by, string source)
    {
        Demand(by, MostInAKey, "the name of who records", -1);
        Demand(source, MostInAKey, "the source", -1);
        for (var i = 0; i < drafts.Count; i++)
        {
            Demand(drafts[i].Key, MostInAKey, "the key", i);
            Demand(drafts[i].Note, MostInAText, "the note", i);
            Demand(drafts[i], i);
        }
    }

    private static void Demand(Draft draft, int index)
    {
        switch (draft)
        {
            case OpenPlace open:
                Demand(open.Name, MostInAText, "the name of the place", index);
                Demand(open.Material, MostInAText, "the material", index);
                Demand(open.Of, MostInAText, "what the place belongs to", index);
                Demand(open.Code, MostInAKey, "the code", index);
                break;
            case Measure measure:
                Demand(measure.Method, MostInAText, "the method", index);
                Demand(measure.Instrument, MostInAText, "the instrument", index);
                Demand(measure.Unit, MostInAKey, "the unit", index);
                break;
            case Happen happen:
                Demand(happen.Text, MostInAText, "the text", index);
                break;
        }
    }

    private static void Demand(string? text, int most, string what, int index)
    {
        var fault = text is null ? null
            : text.Length > most ? $"is longer than {most} characters"
            : text.AsSpan().ContainsAny(Suspects) && !IsWhole(text) ? "holds a character that is none (a zero or half a pair)"
            : null;
        if (fault is not null)
        {
            throw new LedgerRefusal(LedgerRule.Malformed, $"Shorten or retype {what}: it {fault}.") { Index = index };
        }
    }

    private static bool IsWhole(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] == '\0' || (char.IsSurrogate(text[i]) && (i + 1 == text.Length || !char.IsSurrogatePair(text[i], text[++i]))))
            {
                return false;
            }
        }

        return true;
    }
}
