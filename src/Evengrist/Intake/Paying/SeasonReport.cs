using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Intake.Paying;

/// <summary>Quality and value of what came over a span of milling days, by field, district and variety, in one currency.</summary>
/// <param name="From">First milling day.</param>
/// <param name="Until">Last milling day.</param>
/// <param name="Currency">The currency.</param>
/// <param name="Fields">By field (with its variety and class), district by district, dearest first.</param>
/// <param name="Districts">By district and class.</param>
/// <param name="Varieties">By variety and class; wheat whose variety is not known by itself.</param>
/// <param name="All">All loads together.</param>
/// <remarks>Model: docs/model/statements.md.</remarks>
public sealed record SeasonReport(
    LocalDate From, LocalDate Until, string Currency, IReadOnlyList<SeasonRow> Fields, IReadOnlyList<SeasonRow> Districts, IReadOnlyList<SeasonRow> Varieties, LoadGroup All)
{
    private const string Unknown = "not known";

    /// <summary>One report for each currency; none where no load came.</summary>
    /// <param name="loads">Loads, usually of one season.</param>
    /// <param name="from">First milling day.</param>
    /// <param name="until">Last milling day.</param>
    /// <param name="basis">The basis of shares of solids.</param>
    public static IReadOnlyList<SeasonReport> Of(IEnumerable<LoadFacts> loads, LocalDate from, LocalDate until, Basis basis)
    {
        ArgumentNullException.ThrowIfNull(loads);
        return
        [
            .. loads.Where(l => l.Day >= from && l.Day <= until && l.Voided is null).Select(PaymentAccount.Of)
                .GroupBy(a => a.Worth?.Currency ?? a.Load.Terms?.Base.Money.Currency ?? "").OrderBy(g => g.Key.Length == 0).ThenBy(g => g.Key, StringComparer.Ordinal).Select(g => Make([.. g], from, until, g.Key, basis)),
        ];
    }

    private static SeasonReport Make(List<PaymentAccount> accounts, LocalDate from, LocalDate until, string currency, Basis basis)
    {
        var districts = Grouped(accounts, a => Joined(DistrictOf(a.Load), a.Load.Truck.Material), basis).ToDictionary(g => g.Name);
        var fields = accounts.GroupBy(a => Joined(DistrictOf(a.Load), a.Load.Truck.Material)).OrderBy(g => g.Key, StringComparer.Ordinal)
            .SelectMany(d => Ranked(Grouped(d, a => Statement.FieldName(a.Load), basis), districts[d.Key]));
        return new(from, until, currency, [.. fields],
            [.. districts.Values.OrderBy(d => d.Name, StringComparer.Ordinal).Select(d => Row(d))],
            [.. Grouped(accounts, a => Joined(a.Load.Variety.Length > 0 ? a.Load.Variety : Unknown, a.Load.Truck.Material), basis).OrderByDescending(g => g.Net).Select(g => Row(g))],
            LoadGroup.Of("all", accounts, basis));
    }

    private static IEnumerable<SeasonRow> Ranked(IEnumerable<LoadGroup> groups, LoadGroup district)
    {
        var inOrder = groups.OrderByDescending(g => g.EachTonne?.Amount ?? decimal.MinValue).ThenBy(g => g.Name, StringComparer.Ordinal).ToList();
        var priced = inOrder.Count(g => g.EachTonne is not null);
        foreach (var group in inOrder)
        {
            // Fields of the same price share the better place.
            var rank = group.EachTonne is { } each ? 1 + inOrder.Count(g => g.EachTonne is { } other && other > each) : (int?)null;
            yield return Row(group) with
            {
                District = district.Name,
                Rank = rank,
                Of = priced,
                ProteinOverMean = group.Read(Property.Protein)?.Figure.Value - district.Read(Property.Protein)?.Figure.Value,
                EachTonneOverMean = group.EachTonne?.Amount - district.EachTonne?.Amount,
            };
        }
    }

    private static SeasonRow Row(LoadGroup group) => new(group, "", null, 0, null, null, PayWords.Of(group));

    private static IEnumerable<LoadGroup> Grouped(IEnumerable<PaymentAccount> accounts, Func<PaymentAccount, string> name, Basis basis) =>
        accounts.GroupBy(name).Select(g => LoadGroup.Of(g.Key, [.. g], basis));

    private static string DistrictOf(LoadFacts load) => load.District.Length > 0 ? load.District : load.Source?.Kind == PlaceKind.Elevator ? $"bought from {load.Source.Code}" : Unknown;

    private static string Joined(params string[] words) => string.Join(" · ", words.Where(w => w.Length > 0));
}
