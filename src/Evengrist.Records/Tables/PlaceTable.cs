using System.Data.Common;
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

    public override Fact FromRow(DbDataReader row, Attribution attribution) => new PlaceOpened(row.Number(),
        new Place(row.Place(Content), row.GetString(Content + 1), (PlaceKind)row.GetInt32(Content + 2), row.GetString(Content + 3), row.GetString(Content + 4))
        {
            Capacity = row.IsDBNull(Content + 5) ? null : Mass.FromGrams(row.GetInt64(Content + 5)),
            Of = row.GetString(Content + 6),
            CoreShare = row.GetDouble(Content + 7),
            Stirred = Mass.FromGrams(row.GetInt64(Content + 8)),
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
