using Evengrist.Intake;
using Evengrist.Records;
using Evengrist.Records.Intake;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>The contracts of the shelf as terms, by the title that stands on a ticket.</summary>
public sealed class Terms
{
    private readonly TermsShelf shelf;

    private Terms(TermsShelf shelf) => this.shelf = shelf;

    /// <summary>Every version whose terms can be read, by code, the newest first.</summary>
    public IReadOnlyList<ContractTerms> All => shelf.All;

    /// <summary>The contracts a mill keeps.</summary>
    public static Terms Of(Mill mill) => new(TermsShelf.Of(mill));

    /// <summary>The terms that a ticket names; null where there are none.</summary>
    public ContractTerms? Find(string? named) => shelf.Find(named);
}
