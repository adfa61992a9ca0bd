using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Tables;

/// <summary>The row of a table that is being read, column by column.</summary>
internal abstract class Row
{
    public abstract bool IsNone(int column);

    public abstract long Long(int column);

    public abstract double Double(int column);

    public abstract string Text(int column);

    public abstract decimal Decimal(int column);

    public int Int(int column) => checked((int)Long(column));

    public FactId Number() => new(Long(0));

    public FactId? Corrects() => IsNone(1) ? null : new FactId(Long(1));

    public PlaceId Place(int column) => new(Int(column));

    public Instant Moment(int column) => Micros.ToInstant(Long(column));

    public decimal? DecimalOrNone(int column) => IsNone(column) ? null : Decimal(column);

    public string? TextOrNone(int column) => IsNone(column) ? null : Text(column);
}
