using Evengrist.Ledger;

namespace Evengrist.Records.Tables;

internal sealed class HappeningTable() : FactTable("happening", "place", "at_us", "kind", "text")
{
    public override IReadOnlyList<string> Places => ["place"];

    public override IReadOnlyList<string> Words => ["text"];

    public override bool Takes(Draft draft) => draft is Happen;

    public override bool Takes(Fact fact) => fact is Happened;

    public override Fact FromRow(Row row, Attribution attribution) => new Happened(
        new Happening(row.Number(), row.Place(Content), row.Moment(Content + 1), (HappeningKind)row.Int(Content + 2), row.Text(Content + 3)),
        attribution);

    protected override void ToRow(Fact fact, Span<object?> content)
    {
        var happening = ((Happened)fact).Happening;
        content[0] = happening.On.Value;
        content[1] = happening.At.ToMicros();
        content[2] = (int)happening.Kind;
        content[3] = happening.Text;
    }
}
