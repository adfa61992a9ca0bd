using Evengrist.Plant.Answers;
using Evengrist.Plant.Epcis.Sending;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Events;

/// <summary>What somebody was told so far, and what of it would be declared wrong now.</summary>
/// <param name="Earlier">What went there.</param>
/// <param name="Standing">Events told and not declared wrong.</param>
/// <param name="Wrong">Those of them that do not hold any more.</param>
/// <param name="Declared">Those that were declared wrong, with the number of the sending, the latest first; the first so many.</param>
public sealed record SendSight(Earlier Earlier, int Standing, IReadOnlyList<EpcisEventAnswer> Wrong, IReadOnlyList<(int Sending, EpcisEventAnswer Event)> Declared)
{
    /// <summary>Events of a kind shown at most.</summary>
    public const int MostShown = 20;

    /// <summary>Events that were declared wrong so far, all of them.</summary>
    public int DeclaredInAll => Earlier.Heads.Sum(h => h.Declared);

    /// <summary>Looks it up; null where nobody is named, or the name is none.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="to">Whom.</param>
    public static SendSight? Of(Visit visit, string to)
    {
        ArgumentNullException.ThrowIfNull(visit);
        if (Earlier.Fault(to) is not null)
        {
            return null;
        }

        var earlier = EventFiles.Earlier(visit.Mill, to);
        return earlier.Outflow is not { } outflow ? new(earlier, 0, [], [])
            : EventFiles.Ask(visit.Mill, earlier, outflow, visit.Latest, (_, document) => new SendSight(earlier, document.InForce, [.. document.Wrong().Select(EpcisWouldDeclareAnswer.Of)],
                [.. earlier.Declared(MostShown).Select(d => (d.Sending, EpcisWouldDeclareAnswer.Of(d.Wrong)))]));
    }
}
