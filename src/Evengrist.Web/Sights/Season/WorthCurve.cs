using Evengrist.Ledger;
using Evengrist.Season;

namespace Evengrist.Web.Sights.Season;

/// <summary>What one more tonne of a class is worth now, over its protein.</summary>
/// <param name="WheatClass">The class.</param>
/// <param name="Points">Protein, per cent at 12 % moisture, and money for a t.</param>
public sealed record WorthCurve(string WheatClass, IReadOnlyList<WorthPoint> Points)
{
    private const double Step = 0.1, Aside = 1.2;

    /// <summary>A curve for each class on offer, about the protein that lies in store and is offered.</summary>
    public static IReadOnlyList<WorthCurve> Of(SeasonPlan linear)
    {
        ArgumentNullException.ThrowIfNull(linear);
        var worth = new SeasonWorth(linear);
        var curves = new List<WorthCurve>();
        foreach (var wheats in linear.Spec.AllWheats.Where(w => w.Quality.TryGet(Property.Protein, out _)).GroupBy(w => w.WheatClass))
        {
            var like = linear.Spec.Offers.Select(o => o.Wheat).FirstOrDefault(w => w.WheatClass == wheats.Key) ?? wheats.First();
            double[] proteins = [.. wheats.Select(w => w.Quality.Values[Property.Protein].Value)];
            var (least, most) = (Math.Floor(proteins.Min() - Aside), Math.Ceiling(proteins.Max() + Aside));
            double[] values = [.. Enumerable.Range(0, (int)Math.Round((most - least) / Step) + 1).Select(i => least + (i * Step))];
            curves.Add(new WorthCurve(wheats.Key, worth.Curve(like, Property.Protein, values)));
        }

        return curves;
    }
}
