using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Records.Tables;

internal sealed class ReadingTable() : FactTable(
    "reading", "place", "at_us", "what", "value", "unit", "basis_pct", "method", "instrument", "standard_uncertainty")
{
    public override IReadOnlyList<string> Places => ["place"];

    public override IReadOnlyList<string> Words => ["method", "instrument"];

    public override bool Takes(Draft draft) => draft is Measure;

    public override bool Takes(Fact fact) => fact is Measured;

    public override Fact FromRow(Row row, Attribution attribution) => new Measured(
        new Reading(
            row.Number(), row.Place(Content), row.Moment(Content + 1), (Property)row.Int(Content + 2), row.Decimal(Content + 3), row.Text(Content + 4),
            row.DecimalOrNone(Content + 5) is { } moisture ? Basis.At(moisture) : default,
            row.Text(Content + 6), row.Text(Content + 7), row.DecimalOrNone(Content + 8)),
        attribution);

    protected override void ToRow(Fact fact, Span<object?> content)
    {
        var reading = ((Measured)fact).Reading;
        content[0] = reading.On.Value;
        content[1] = reading.At.ToMicros();
        content[2] = (int)reading.What;
        content[3] = Digits(reading.Value);
        content[4] = reading.Unit;
        content[5] = reading.Basis.IsStated ? Digits(reading.Basis.MoisturePercent) : null;
        content[6] = reading.Method;
        content[7] = reading.Instrument;
        content[8] = reading.StandardUncertainty is { } uncertainty ? Digits(uncertainty) : null;
    }

    // A decimal knows how many digits were reported, and this prints them all: 12.10 stays 12.10.
    private static string Digits(decimal value) => value.ToString(CultureInfo.InvariantCulture);
}
