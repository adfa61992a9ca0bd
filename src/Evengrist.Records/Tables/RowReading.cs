using System.Data.Common;
using System.Globalization;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Tables;

/// <summary>Typed values out of a row.</summary>
internal static class RowReading
{
    public static FactId Number(this DbDataReader row) => new(row.GetInt64(0));

    public static FactId? Corrects(this DbDataReader row) => row.IsDBNull(1) ? null : new FactId(row.GetInt64(1));

    public static PlaceId Place(this DbDataReader row, int column) => new(row.GetInt32(column));

    public static Instant Moment(this DbDataReader row, int column) => Micros.ToInstant(row.GetInt64(column));

    public static decimal Decimal(this DbDataReader row, int column) => decimal.Parse(row.GetString(column), NumberStyles.Number, CultureInfo.InvariantCulture);

    public static decimal? DecimalOrNone(this DbDataReader row, int column) => row.IsDBNull(column) ? null : row.Decimal(column);

    public static string? TextOrNone(this DbDataReader row, int column) => row.IsDBNull(column) ? null : row.GetString(column);
}
