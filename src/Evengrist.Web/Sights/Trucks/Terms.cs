using Evengrist.Intake;
using Evengrist.Intake.Paying;
using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Records.Intake;
using NodaTime;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>The contracts of the shelf as terms, by the title that stands on a ticket, with the papers of the scale house beside them.</summary>
public sealed class Terms
{
    private readonly TradeShelf shelf;

    private Terms(TradeShelf shelf) => this.shelf = shelf;

    /// <summary>Every version whose terms can be read, by code, the newest first.</summary>
    public IReadOnlyList<ContractTerms> All => shelf.Terms.All;

    /// <summary>The contracts a mill keeps.</summary>
    public static Terms Of(Mill mill) => new(TradeShelf.Of(mill));

    /// <summary>The terms that a ticket names; null where there are none.</summary>
    public ContractTerms? Find(string? named) => shelf.Terms.Find(named);

    /// <summary>The load of a truck with payments and certificates; null where it had not come by then.</summary>
    public LoadFacts? Load(Book book, Place truck, Instant at) => shelf.Reader(book, at).Look(truck);
}
