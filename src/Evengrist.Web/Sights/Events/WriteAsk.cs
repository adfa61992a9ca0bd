using Evengrist.Ledger;
using Evengrist.Plant.Epcis.Writing;
using Evengrist.Web.Visiting;
using NodaTime.Text;

namespace Evengrist.Web.Sights.Events;

/// <summary>What is to be written for others: a span of days, or the way of one lot.</summary>
/// <param name="Code">Code of the lot; empty for a span.</param>
/// <param name="From">First day.</param>
/// <param name="Until">Last day.</param>
/// <param name="Outflow">How bins are taken to empty.</param>
public sealed record WriteAsk(string Code, string From, string Until, string Outflow)
{
    /// <summary>Whether anything was asked.</summary>
    public bool IsAsked => Code.Length + From.Length + Until.Length > 0;

    /// <summary>Reads the address.</summary>
    public static WriteAsk Of(IQueryCollection query)
    {
        ArgumentNullException.ThrowIfNull(query);
        string Said(string field) => (query.Typed(field) ?? "").Trim();
        return new(Said("code"), Said("from"), Said("until"), Said("outflow"));
    }

    /// <summary>The address of the document, or what is wrong, in a sentence.</summary>
    public (string? Address, string Why) Resolve(Visit visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        var outflow = Outflow is "core" or "stirred" ? Outflow : "fifo";
        if (Code.Length > 0)
        {
            if (From.Length + Until.Length > 0)
            {
                return (null, "Give either a code or days, not both: the way of a lot has its own span.");
            }

            var place = visit.Mill.Ask(view => view.Book.Find(Code));
            return place is null ? (null, $"There is no place with the code “{Code}”. Look for a typing error.")
                : !MillDocument.CanFollow(place) ? (null, $"{place.Code} is a {place.Kind.Words()}: only a truck, pallet, load, tote, field, elevator or additive lot has a way of its own. Give days instead.")
                : ($"/api/epcis/export?code={Uri.EscapeDataString(place.Code)}&outflow={outflow}", "");
        }

        return LocalDatePattern.Iso.Parse(From) is not { Success: true, Value: var first } || LocalDatePattern.Iso.Parse(Until) is not { Success: true, Value: var last } ? (null, $"Give two days like {visit.AsOf.InZone(visit.Zone).Date:R}, or a code.")
            : last < first ? (null, "The last day lies before the first.")
            : ($"/api/epcis/export?from={InstantPattern.General.Format(visit.Zone.AtStartOfDay(first).ToInstant())}&until={InstantPattern.General.Format(visit.Zone.AtStartOfDay(last.PlusDays(1)).ToInstant())}&outflow={outflow}", "");
    }
}
