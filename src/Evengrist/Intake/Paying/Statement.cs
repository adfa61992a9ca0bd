using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Intake.Paying;

/// <summary>What one grower delivered over a span of milling days, in one currency, and what is left to pay.</summary>
/// <param name="Grower">Code of the grower.</param>
/// <param name="Name">Name of the grower.</param>
/// <param name="From">First milling day.</param>
/// <param name="Until">Last milling day.</param>
/// <param name="Currency">The currency; empty where no load settles and none was paid for.</param>
/// <param name="Fields">By field and variety.</param>
/// <param name="All">All loads together.</param>
/// <remarks>Sums are sums of the tickets as each is rounded, so that they come out to the cent. Model: docs/model/statements.md.</remarks>
public sealed record Statement(string Grower, string Name, LocalDate From, LocalDate Until, string Currency, IReadOnlyList<LoadGroup> Fields, LoadGroup All)
{
    /// <summary>Statements of a grower: one for each currency, usually one; none where no load came.</summary>
    /// <param name="loads">The grower's loads.</param>
    /// <param name="from">First milling day.</param>
    /// <param name="until">Last milling day.</param>
    /// <param name="basis">The basis of shares of solids.</param>
    public static IReadOnlyList<Statement> Of(IEnumerable<LoadFacts> loads, LocalDate from, LocalDate until, Basis basis)
    {
        ArgumentNullException.ThrowIfNull(loads);
        return
        [
            .. loads.Where(l => l.Day >= from && l.Day <= until).OrderBy(l => l.At).ThenBy(l => l.Truck.Code, StringComparer.Ordinal).Select(PaymentAccount.Of)
                .GroupBy(a => (Grower: a.Load.GrowerCode.ToUpperInvariant(), Currency: CurrencyOf(a))).OrderBy(g => g.Key)
                .Select(g => Make([.. g], from, until, g.Key.Currency, basis)),
        ];
    }

    /// <summary>Field and variety as a statement names them: <c>DS-2 · Larkspur</c>.</summary>
    public static string FieldName(LoadFacts load)
    {
        ArgumentNullException.ThrowIfNull(load);
        return string.Join(" · ", new[] { load.Source?.Code ?? "source not booked", load.Variety, load.Truck.Material }.Where(w => w.Length > 0));
    }

    private static Statement Make(List<PaymentAccount> accounts, LocalDate from, LocalDate until, string currency, Basis basis) => new(
        accounts[0].Load.GrowerCode, accounts[0].Load.GrowerName, from, until, currency,
        [.. accounts.GroupBy(a => FieldName(a.Load)).OrderBy(g => g.Key, StringComparer.Ordinal).Select(g => LoadGroup.Of(g.Key, [.. g], basis))],
        LoadGroup.Of(accounts[0].Load.GrowerName, accounts, basis));

    private static string CurrencyOf(PaymentAccount account) => account.Worth?.Currency ?? account.Paid?.Currency ?? account.Load.Terms?.Base.Money.Currency ?? "";
}
