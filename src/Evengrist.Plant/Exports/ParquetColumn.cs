using Evengrist.Quantities.Lists;
using NodaTime;
using Parquet;
using Parquet.Schema;

namespace Evengrist.Plant.Exports;

/// <summary>One column on its way into a Parquet file.</summary>
internal abstract record ParquetColumn(DataField Field)
{
    public static ParquetColumn Of(ListColumn column) => column.Type switch
    {
        ListType.Whole => new OfValues<long>(new DataField<long?>(column.Head), v => (long)v),
        ListType.Number => new OfValues<double>(new DataField<double?>(column.Head), v => v is decimal exact ? (double)exact : (double)v),
        ListType.YesNo => new OfValues<bool>(new DataField<bool?>(column.Head), v => (bool)v),
        ListType.Moment => new OfValues<DateTime>(new DateTimeDataField(column.Head, DateTimeFormat.DateAndTimeMicros, isAdjustedToUTC: true, isNullable: true), v => ((Instant)v).ToDateTimeUtc()),
        ListType.Day => new OfValues<DateTime>(new DateTimeDataField(column.Head, DateTimeFormat.Date, isNullable: true), v => ((LocalDate)v).ToDateTimeUnspecified()),
        _ => new OfText(new DataField<string>(column.Head)),
    };

    public abstract Task WriteAsync(ParquetRowGroupWriter group, IReadOnlyList<object?>[] rows, int column, CancellationToken stopping);

    private sealed record OfText(DataField Field) : ParquetColumn(Field)
    {
        public override async Task WriteAsync(ParquetRowGroupWriter group, IReadOnlyList<object?>[] rows, int column, CancellationToken stopping) =>
            await group.WriteAsync(Field, (IReadOnlyCollection<string?>)Array.ConvertAll(rows, r => (string?)r[column])).ConfigureAwait(false);
    }

    private sealed record OfValues<T>(DataField Field, Func<object, T> Value) : ParquetColumn(Field)
        where T : struct
    {
        public override async Task WriteAsync(ParquetRowGroupWriter group, IReadOnlyList<object?>[] rows, int column, CancellationToken stopping) =>
            await group.WriteAsync<T>(Field, Array.ConvertAll(rows, r => r[column] is { } value ? Value(value) : (T?)null).AsMemory(), cancellationToken: stopping).ConfigureAwait(false);
    }
}
