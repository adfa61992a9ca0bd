using Evengrist.Ledger;
using Evengrist.Packing.Boards;
using Evengrist.Records;
using Evengrist.Records.Packing;
using NodaTime;

namespace Evengrist.Web.Sights.Packing;

/// <summary>What a form about the packing hall may name.</summary>
/// <param name="Lines">Codes of the packing lines in the ledger.</param>
/// <param name="Products">Codes of the products.</param>
/// <param name="Flours">Their flours.</param>
/// <param name="Bins">The flour bins connected to a line.</param>
internal sealed record HallKnown(IReadOnlyList<string> Lines, IReadOnlyList<string> Products, IReadOnlyList<string> Flours, IReadOnlyList<BinNow> Bins)
{
    /// <summary>What the mill has at a moment.</summary>
    public static HallKnown Of(Mill mill, Instant at)
    {
        var question = HallRecords.Question(mill, at);
        return new(
            mill.Ask(view => view.Book.OfKind(PlaceKind.PackingLine).Select(p => p.Code).Order(StringComparer.Ordinal).ToArray()), [.. question.Products.Select(p => p.Code).Order(StringComparer.Ordinal)],
            [.. question.Products.Select(p => p.Flour).Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.Ordinal)], question.Bins);
    }
}
