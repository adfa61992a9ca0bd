using NodaTime;

namespace Evengrist.Ledger;

/// <summary>Readings or happenings: all of them by number, and those that count by place and time.</summary>
internal sealed class PlacedFacts<T>(Func<T, FactId> id, Func<T, PlaceId> on, Func<T, Instant> at)
    where T : class
{
    private static readonly IReadOnlyList<T> None = [];
    private readonly List<T> all = [];
    private readonly HashSet<FactId> voided = [];
    private readonly Dictionary<PlaceId, List<T>> byPlace = [];

    public IReadOnlyList<T> All => all;

    public IReadOnlyList<T> On(PlaceId place) => byPlace.TryGetValue(place, out var list) ? list : None;

    public bool Counts(T fact) => !voided.Contains(id(fact));

    public bool Has(FactId number) => Find(number) is not null && !voided.Contains(number);

    public void Add(T fact, FactId? corrects)
    {
        if (corrects is { } number && Find(number) is { } earlier)
        {
            voided.Add(number);
            byPlace[on(earlier)].Remove(earlier);
        }

        all.Add(fact);
        Place(fact);
    }

    public void RemoveLast(FactId? corrects)
    {
        var fact = all[^1];
        all.RemoveAt(all.Count - 1);
        byPlace[on(fact)].Remove(fact);
        if (corrects is { } number && Find(number) is { } earlier)
        {
            voided.Remove(number);
            Place(earlier);
        }
    }

    private void Place(T fact)
    {
        if (!byPlace.TryGetValue(on(fact), out var list))
        {
            byPlace.Add(on(fact), list = []);
        }

        var i = list.Count;
        while (i > 0 && at(list[i - 1]) > at(fact))
        {
            i--;
        }

        list.Insert(i, fact);
    }

    private T? Find(FactId number) => all.FindSorted(number, id) is var i && i >= 0 ? all[i] : null;
}
