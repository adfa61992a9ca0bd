using Evengrist.Ledger;

namespace Evengrist.Records.Tables;

internal sealed class ConnectionTable() : FactTable("connection", "from_place", "to_place")
{
    public override IReadOnlyList<string> Places => ["from_place", "to_place"];

    public override string Moment => "recorded_us";

    public override bool Takes(Draft draft) => draft is Connect;

    public override bool Takes(Fact fact) => fact is Connected;

    public override Fact FromRow(Row row, Attribution attribution) =>
        new Connected(row.Number(), row.Place(Content), row.Place(Content + 1), attribution);

    protected override void ToRow(Fact fact, Span<object?> content)
    {
        var connected = (Connected)fact;
        content[0] = connected.From.Value;
        content[1] = connected.To.Value;
    }
}
