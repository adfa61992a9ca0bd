using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Records.Tables;

internal sealed class MovementTable() : FactTable("movement", "from_place", "to_place", "mass_g", "at_us", "until_us")
{
    public override IReadOnlyList<string> Places => ["from_place", "to_place"];

    public override bool Takes(Draft draft) => draft is Move;

    public override bool Takes(Fact fact) => fact is Moved;

    public override Fact FromRow(Row row, Attribution attribution) => new Moved(
        new Movement(row.Number(), row.Place(Content), row.Place(Content + 1), Mass.FromGrams(row.Long(Content + 2)), row.Moment(Content + 3), row.Moment(Content + 4)),
        attribution);

    protected override void ToRow(Fact fact, Span<object?> content)
    {
        var movement = ((Moved)fact).Movement;
        content[0] = movement.From.Value;
        content[1] = movement.To.Value;
        content[2] = movement.Mass.Grams;
        content[3] = movement.At.ToMicros();
        content[4] = movement.Until.ToMicros();
    }
}
