using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Records.Tables;

internal sealed class PlaceTable() : FactTable("place", "number", "code", "kind", "name", "material", "capacity_g", "of", "core_share", "stirred_g")
{
    public override IReadOnlyList<string> Places => ["number"];

    public override IReadOnlyList<string> Words => ["code", "name", "material", "of"];

    public override string Moment => "recorded_us";

    public override bool Takes(Draft draft) => draft is OpenPlace;

    public override bool Takes(Fact fact) => fact is PlaceOpened;

    public override Fact FromRow(Row row, Attribution attribution) => new PlaceOpened(row.Number(),
        new Place(row.Place(Content), row.Text(Content + 1), (PlaceKind)row.Int(Content + 2), row.Text(Content + 3), row.Text(Content + 4))
        {
            Capacity = row.IsNone(Content + 5) ? null : Mass.FromGrams(row.Long(Content + 5)),
            Of = row.Text(Content + 6),
            CoreShare = row.Double(Content + 7),
            Stirred = Mass.FromGrams(row.Long(Content + 8)),
        },
        attribution);

    protected override void ToRow(Fact fact, Span<object?> content)
    {
        var place = ((PlaceOpened)fact).Place;
        content[0] = place.Id.Value;
        content[1] = place.Code;
        content[2] = (int)place.Kind;
        content[3] = place.Name;
        content[4] = place.Material;
        content[5] = place.Capacity?.Grams;
        content[6] = place.Of;
        content[7] = place.CoreShare;
        content[8] = place.Stirred.Grams;
    }
}
