using Evengrist.Ledger;
using Evengrist.Plant.Epcis.Sending;
using Evengrist.Plant.Epcis.Writing;
using Evengrist.Web.Visiting;
using NodaTime.Text;

namespace Evengrist.Web.Sights.Events;

/// <summary>What is to be written for others: a span of days, or the way of one lot.</summary>
/// <param name="Code">Code of the lot; empty for a span.</param>
/// <param name="From">First day.</param>
/// <param name="Until">Last day.</param>
/// <param name="Outflow">How bins are taken to empty.</param>
/// <param name="To">Whom it is for; empty for anybody.</param>
public sealed record WriteAsk(string Code, string From, string Until, string Outflow, string To)
{
    /// <summary>Whether anything was asked.</summary>
    public bool IsAsked => Code.Length + From.Length + Until.Length > 0;

    /// <summary>Reads the address.</summary>
    public static WriteAsk Of(IQueryCollection query)
    {
        ArgumentNullException.ThrowIfNull(query);
        string Said(string field) => (query.Typed(field) ?? "").Trim();
        return new(Said("code"), Said("from"), Said("until"), Said("outflow"), Said("to"));
    }

    /// <summary>How bins are taken to empty; null where it says none.</summary>
    public Outflow? Hypothesis => Outflow.Length == 0 ? Evengrist.Ledger.Outflow.FirstInFirstOut : OutflowWords.Read(Outflow);

    /// <summary>What is to be written, or what is wrong, in a sentence.</summary>
    public (ExportAsk? Written, string Why) Resolve(Visit visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        var outflow = Hypothesis ?? Evengrist.Ledger.Outflow.FirstInFirstOut;
        var to = To.Length > 0 ? To : null;
        if ((to is null ? null : Earlier.Fault(to) ?? EventFiles.Earlier(visit.Mill, to).Against(outflow)) is { } against)
        {
            return (null, against);
        }

        if (Code.Length > 0)
        {
            if (From.Length + Until.Length > 0)
            {
                return (null, "Give either a code or days, not both: the way of a lot has its own span.");
            }

            var place = visit.Mill.Ask(view => view.Book.Find(Code));
            return place is null ? (null, $"There is no place with the code “{Code}”. Look for a typing error.")
                : !MillDocument.CanFollow(place) ? (null, $"{place.Code} is a {place.Kind.Words()}: only a truck, pallet, load, tote, field, elevator or additive lot has a way of its own. Give days instead.")
                : (new(place.Code, null, null, outflow, to), "");
        }

        return LocalDatePattern.Iso.Parse(From) is not { Success: true, Value: var first } || LocalDatePattern.Iso.Parse(Until) is not { Success: true, Value: var last } ? (null, $"Give two days like {visit.AsOf.InZone(visit.Zone).Date:R}, or a code.")
            : last < first ? (null, "The last day lies before the first.")
            : (new(null, visit.Zone.AtStartOfDay(first).ToInstant(), visit.Zone.AtStartOfDay(last.PlusDays(1)).ToInstant(), outflow, to), "");
    }
}
