using Evengrist.Laboratory.Lots;
using NodaTime;

namespace Evengrist.Records.Laboratory;

/// <summary>A lot judged again, and how it stood meanwhile.</summary>
/// <param name="Seen">The lot as it stands.</param>
/// <param name="Again">Its odds before and after.</param>
public sealed record RejudgedLot(SeenLot Seen, Rejudgement Again);

/// <summary>Finds every lot whose readings came from an instrument that read wrong, with its odds as judged and as they are. Changes nothing.</summary>
public static class RejudgeLots
{
    /// <summary>The lots, by the moment they were packed.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="wrong">The instrument and its span.</param>
    /// <param name="asOf">The moment as of which lots, readings and decisions are looked at.</param>
    /// <param name="faults">Why it cannot be asked, each a sentence; empty where it can.</param>
    public static IReadOnlyList<RejudgedLot> Of(Mill mill, WrongSpan wrong, Instant asOf, out IReadOnlyList<string> faults)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(wrong);
        faults = wrong.Fault is { } fault ? [fault] : wrong.Until - wrong.From > Duration.FromDays(LotShelf.MostDays - 3) ? [$"A span of at most {LotShelf.MostDays - 3} days is judged again at once."] : [];
        if (faults.Count > 0)
        {
            return [];
        }

        var rules = KeepReleaseRules.Newest(mill).Rules;
        var judges = LotShelf.Judges(mill, rules, asOf);
        var lots = LotShelf.Of(mill, LotShelf.DayOf(mill, wrong.From), LotShelf.DayOf(mill, wrong.Until + Duration.FromMinutes(rules.LagMinutes)), asOf);
        return
        [
            .. from lot in lots
               where lot.Judged is not null
               let again = Rejudgement.Of(lot.Lot, lot.Readings, judges(lot.Judged!.Specification), wrong)
               where again is not null
               orderby lot.Lot.From, lot.Lot.Flour
               select new RejudgedLot(lot, again),
        ];
    }
}
