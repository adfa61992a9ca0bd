using Evengrist.Quantities;

namespace Evengrist.Intake.Paying;

/// <summary>Several loads taken together: of one field and variety, of a district, of a grower. All settled loads are in one currency.</summary>
public sealed record LoadGroup
{
    private LoadGroup(string name, IReadOnlyList<PaymentAccount> accounts, Basis basis)
    {
        (Name, Accounts, Basis) = (name, accounts, basis);
        Standing = [.. accounts.Where(a => a.Load.Voided is null)];
        Settled = [.. Standing.Where(a => a.Settled is not null)];
        Quality = QualityAverage.All([.. Standing.Select(a => a.Load)], basis);
    }

    /// <summary>What the loads have in common.</summary>
    public string Name { get; }

    /// <summary>Every load, voided ones included.</summary>
    public IReadOnlyList<PaymentAccount> Accounts { get; }

    /// <summary>The basis of shares of solids.</summary>
    public Basis Basis { get; }

    /// <summary>Loads that were not voided.</summary>
    public IReadOnlyList<PaymentAccount> Standing { get; }

    /// <summary>Loads among them that settle as they stand.</summary>
    public IReadOnlyList<PaymentAccount> Settled { get; }

    /// <summary>Average quality of the standing loads.</summary>
    public IReadOnlyList<QualityLine> Quality { get; }

    /// <summary>Net of the standing loads.</summary>
    public Mass Net => Sum(Standing, a => a.Load.Net);

    /// <summary>Net of those that settle.</summary>
    public Mass SettledNet => Sum(Settled, a => a.Settled!.Net);

    /// <summary>Clean mass of those that settle.</summary>
    public Mass Clean => Sum(Settled, a => a.Settled!.Clean);

    /// <summary>Settled mass.</summary>
    public Mass SettledMass => Sum(Settled, a => a.Settled!.Settled);

    /// <summary>Bushels paid for, not rounded.</summary>
    public decimal Bushels => Settled.Sum(a => a.Settled!.Bushels);

    /// <summary>The pay of all loads that settle: the sum of the tickets, to the cent; null where none does.</summary>
    public Money? Gross => Total(Settled.Select(a => (Money?)a.Settled!.Pay));

    /// <summary>Paid in advance, on voided tickets too; null where nothing was.</summary>
    public Money? Advances => Total(Accounts.Select(a => a.Advances));

    /// <summary>Paid in all; null where nothing was.</summary>
    public Money? Paid => Total(Accounts.Select(a => a.Paid));

    /// <summary>Pay less what was paid, on the loads whose worth can be said; negative is to be got back; null where there is none.</summary>
    public Money? Left => Total(Accounts.Select(a => a.Left));

    /// <summary>Pay for a bushel paid for, not rounded; null where none is.</summary>
    public Money? EachBushel => Gross is { } gross && Bushels > 0m ? gross * (1m / Bushels) : null;

    /// <summary>Pay for a tonne of net as it came, not rounded; null where none is paid for.</summary>
    public Money? EachTonne => Gross is { } gross && SettledNet > Mass.Zero ? gross * (1m / SettledNet.Tonnes) : null;

    /// <summary>What the net would have been worth at the base price; null where no load settles.</summary>
    public Money? AtBase => Total(Settled.Select(a => (Money?)a.Settled!.AtBase));

    /// <summary>What moved the pay, largest first.</summary>
    public IReadOnlyList<PayCause> Causes =>
    [
        .. Settled.SelectMany(a => a.Settled!.Moves).GroupBy(m => m.What).Select(g => new PayCause(g.Key, g.Select(m => m.Money).Aggregate((a, b) => a + b)))
            .OrderByDescending(c => Math.Abs(c.Money.Amount)).ThenBy(c => c.What, StringComparer.Ordinal),
    ];

    /// <summary>The average of a property; null where none was read.</summary>
    public QualityLine? Read(Ledger.Property what) => Quality.FirstOrDefault(q => q.What == what);

    /// <summary>A group of loads.</summary>
    /// <param name="name">What they have in common.</param>
    /// <param name="accounts">The loads, in one currency.</param>
    /// <param name="basis">The basis of shares of solids.</param>
    public static LoadGroup Of(string name, IReadOnlyList<PaymentAccount> accounts, Basis basis)
    {
        ArgumentNullException.ThrowIfNull(accounts);
        return new(name, accounts, basis);
    }

    private static Mass Sum(IEnumerable<PaymentAccount> accounts, Func<PaymentAccount, Mass> mass) => Mass.FromGrams(accounts.Sum(a => mass(a).Grams));

    private static Money? Total(IEnumerable<Money?> amounts) => amounts.OfType<Money>().Aggregate((Money?)null, (sum, next) => sum is { } so ? so + next : next);
}
