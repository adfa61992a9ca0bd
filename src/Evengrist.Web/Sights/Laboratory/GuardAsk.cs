using Evengrist.Laboratory.Conformity;
using Evengrist.Laboratory.Specifications;
using Evengrist.Web.Sights.Season;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>Which guard band keeps a risk over all lots, asked of one line of a specification.</summary>
/// <param name="Fields">What was typed.</param>
/// <param name="Item">The line; null where nothing was asked.</param>
/// <param name="Without">Both risks without a band; null where nothing could be reckoned.</param>
/// <param name="Bands">The bands for the risks that were given.</param>
public sealed record GuardAsk(TypedFields Fields, SpecificationItem? Item, LotRisk? Without, IReadOnlyList<GuardOverLots> Bands)
{
    /// <summary>Reads and answers what was asked; every fault stands in the fields.</summary>
    /// <param name="items">The lines of the specification.</param>
    /// <param name="query">What was typed into a field; null where it did not come.</param>
    public static GuardAsk Of(IReadOnlyList<SpecificationItem> items, Func<string, string?> query)
    {
        ArgumentNullException.ThrowIfNull(items);
        ArgumentNullException.ThrowIfNull(query);
        var fields = new TypedFields(query);
        if (!fields.Has("line"))
        {
            return new(fields, null, null, []);
        }

        var title = fields.Text("line", "");
        var (item, mean, deviation, uncertainty) = (items.FirstOrDefault(i => i.Title == title), fields.Needed("mean", "Mean of the lots"), fields.Needed("deviation", "Standard deviation of the lots"), fields.Needed("u", "Standard uncertainty of a result"));
        var (buyers, mills) = (Risk("outside", "Outside and accepted, %"), Risk("inside", "Inside and turned away, %"));
        if (item is null)
        {
            fields.Fault("Choose a line of this specification.");
        }

        if (fields.Faults.Count == 0 && !(deviation > 0 && uncertainty > 0))
        {
            fields.Fault("The lots' standard deviation and the uncertainty of a result are above 0.");
        }

        if (fields.Faults.Count > 0)
        {
            return new(fields, item, null, []);
        }

        var (lots, tolerance) = (new NormalBelief(mean, deviation), item!.Tolerance);
        return new(fields, item, LotRisk.Of(lots, uncertainty, tolerance, tolerance),
        [
            .. new[] { (Keeps: RiskOverLots.AcceptedOutside, Wanted: buyers), (Keeps: RiskOverLots.RejectedInside, Wanted: mills) }.Where(r => r.Wanted is not null)
                .Select(r => GuardOverLots.Of(r.Keeps, r.Wanted!.Value / 100, lots, uncertainty, tolerance)),
        ]);

        double? Risk(string key, string words)
        {
            var risk = fields.Number(key, words);
            if (risk is not null and not (> 0 and <= 50))
            {
                fields.Fault($"{words}: a risk to be kept is above 0 and at most 50 %.");
            }

            return risk;
        }
    }
}
