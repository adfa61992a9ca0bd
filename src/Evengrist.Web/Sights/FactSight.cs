using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Records.Browsing;
using NodaTime;

namespace Evengrist.Web.Sights;

/// <summary>A fact as a line of the ledger.</summary>
/// <param name="Line">The fact with who recorded it and what became of it.</param>
/// <param name="Places">The places it speaks of.</param>
/// <param name="Says">What it tells.</param>
public sealed record FactSight(FactLine Line, IReadOnlyList<Place> Places, string Says)
{
    /// <summary>Its number.</summary>
    public FactId Id => Line.Fact.Id;

    /// <summary>When it happened.</summary>
    public Instant When => FactWords.When(Line.Fact);

    /// <summary>Puts the places and the words to facts.</summary>
    public static IReadOnlyList<FactSight> Of(Mill mill, IReadOnlyList<FactLine> lines, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Ask(view => (FactSight[])[.. lines.Select(l => new FactSight(l, [.. FactWords.Places(l.Fact).Select(p => view.Book[p])], FactWords.Says(l.Fact, units)))]);
    }

    /// <summary>One fact by its number; null where there is none.</summary>
    public static FactSight? Find(Mill mill, long number, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(mill);
        if (number is <= 0 or long.MaxValue)
        {
            return null;
        }

        var found = mill.Facts(new FactFilter { Before = new FactId(number + 1), Size = 1 }).Lines;
        return found is [var line] && line.Fact.Id.Value == number ? Of(mill, [line], units)[0] : null;
    }

    /// <summary>The chain of corrections this fact stands in, oldest first, itself included.</summary>
    public IReadOnlyList<FactSight> Chain(Mill mill, UnitSystem units)
    {
        var chain = new List<FactSight> { this };
        while (chain[0].Line.Fact.Attribution.Corrects is { } earlier && Find(mill, earlier.Value, units) is { } found)
        {
            chain.Insert(0, found);
        }

        while (chain[^1].Line.CorrectedBy is { } later && Find(mill, later.Value, units) is { } found)
        {
            chain.Add(found);
        }

        return chain;
    }
}
