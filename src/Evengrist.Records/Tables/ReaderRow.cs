using System.Data.Common;
using System.Globalization;

namespace Evengrist.Records.Tables;

/// <summary>The row a reader stands on; good for both engines.</summary>
internal sealed class ReaderRow(DbDataReader reader) : Row
{
    public override bool IsNone(int column) => reader.IsDBNull(column);

    public override long Long(int column) => reader.GetFieldValue<long>(column);

    public override double Double(int column) => reader.GetDouble(column);

    public override string Text(int column) => reader.GetString(column);

    public override decimal Decimal(int column) => decimal.Parse(reader.GetString(column), NumberStyles.Number, CultureInfo.InvariantCulture);
}
