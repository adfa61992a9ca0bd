using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Records.Browsing;

namespace Evengrist.Web.Sights.Traces;

/// <summary>Who recorded the movements on the way of a trace, while it passed.</summary>
public static class RecordersOf
{
    private const int PlacesAsked = 14, FactsAsked = 24;

    /// <summary>Names by place: the plant's own places first, then loads and packages.</summary>
    public static IReadOnlyList<(string Place, string Names)> Trace(Mill mill, TraceSight sight)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(sight);
        var stages = sight.Stages.Where(s => s.Places == 1 && s.Kind.Role() is not (PlaceRole.Source or PlaceRole.Sink)).OrderBy(s => s.Kind.Role() == PlaceRole.Unit).ThenByDescending(s => s.Share)
            .Take(PlacesAsked).OrderBy(s => s.Kind).ThenBy(s => s.Name, StringComparer.Ordinal).ToArray();
        var facts = mill.Ask(view => stages.Select(s => Movements(view.Book, s)).ToArray());
        var names = new Dictionary<FactId, string>();
        return [.. stages.Zip(facts, (stage, ids) => (stage.Name, Names(mill, ids, names)))];
    }

    private static FactId[] Movements(Book book, Stage stage) => book.Find(stage.Name) is { } place
        ? [.. book.MovementsOf(place.Id).Select(i => book.Movements[i]).Where(m => place.Kind.Role() == PlaceRole.Unit || (m.Until >= stage.From && m.At <= stage.Until)).Select(m => m.Id)]
        : [];

    // Each is found by its number, which is quick; of very many, some spread over all stand for the rest.
    private static string Names(Mill mill, FactId[] movements, Dictionary<FactId, string> names)
    {
        var asked = movements.Length <= FactsAsked ? movements : [.. Enumerable.Range(0, FactsAsked).Select(i => movements[i * (movements.Length - 1) / (FactsAsked - 1)])];
        foreach (var id in asked.Where(id => !names.ContainsKey(id)))
        {
            var page = mill.Facts(new FactFilter { Sort = FactSort.Movement, Before = new FactId(id.Value + 1), Size = 1 });
            names.Add(id, page.Lines[0].Fact.Attribution.By);
        }

        return string.Join(", ", asked.Select(id => names[id]).Distinct().Order(StringComparer.Ordinal)) + (asked.Length < movements.Length ? $" ({asked.Length} of {movements.Length} movements looked at)" : "");
    }
}
