using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Bench.Recall;

/// <summary>A book laid end to end with itself: every year has trucks and packages of its own, the plant stays.</summary>
internal static class TenYears
{
    public static Book Of(Book year, int years)
    {
        var book = new Book();
        var attribution = new Attribution(Instant.FromUtc(2050, 1, 1, 0, 0), "Bench", "bench", "bench");
        var number = 0L;
        var facts = new List<Fact>();
        var plant = year.Places.Where(p => p.Kind.Role() != PlaceRole.Unit).ToDictionary(p => p.Id, p => p);
        var ids = new Dictionary<PlaceId, PlaceId>();
        var places = 0;
        foreach (var place in plant.Values)
        {
            ids[place.Id] = new PlaceId(++places);
            facts.Add(new PlaceOpened(new FactId(++number), place with { Id = ids[place.Id] }, attribution));
        }

        foreach (var (from, to) in year.Connections)
        {
            facts.Add(new Connected(new FactId(++number), ids[from], ids[to], attribution));
        }

        for (var y = 0; y < years; y++)
        {
            var later = Duration.FromDays(365 * y);
            foreach (var place in year.Places.Where(p => p.Kind.Role() == PlaceRole.Unit))
            {
                ids[place.Id] = new PlaceId(++places);
                facts.Add(new PlaceOpened(new FactId(++number), place with { Id = ids[place.Id], Code = y == years - 1 ? place.Code : $"{place.Code}~{y}" }, attribution));
            }

            for (var i = 0; i < year.Movements.Count; i++)
            {
                if (year.Counts(i) && year.Movements[i] is { Mass.Grams: > 0 } m)
                {
                    facts.Add(new Moved(new Movement(new FactId(++number), ids[m.From], ids[m.To], m.Mass, m.At + later, m.Until + later), attribution));
                }
            }
        }

        book.Append(facts, trusted: true);
        return book;
    }
}
