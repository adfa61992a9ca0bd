using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Records.Engines;
using Evengrist.Records.Tables;

namespace Evengrist.Records.Browsing;

/// <summary>Asks each table for the newest facts that match and merges them by number.</summary>
internal sealed class FactQuery(Engine engine, Book book, FactFilter filter)
{
    private readonly int size = Math.Clamp(filter.Size, 1, 1000);

    public FactPage Page()
    {
        var place = string.IsNullOrWhiteSpace(filter.Place) ? null : book.Find(filter.Place);
        if (place is null && !string.IsNullOrWhiteSpace(filter.Place))
        {
            return new FactPage([], null);
        }

        var lines = FactTable.All.Index()
            .Where(t => filter.Sort is not { } sort || (int)sort == t.Index)
            .SelectMany(t => Newest(t.Item, (FactSort)t.Index, place))
            .OrderByDescending(l => l.Fact.Id).Take(size + 1).ToList();
        return lines.Count <= size ? new FactPage(lines, null) : new FactPage(lines[..size], lines[size - 1].Fact.Id);
    }

    private List<FactLine> Newest(FactTable table, FactSort sort, Place? place)
    {
        var (conditions, parameters) = Conditions(table, place);
        var sql = $"SELECT {Sql.Names(table.Columns)}, (SELECT later.id FROM {table.Name} AS later WHERE later.corrects = {table.Name}.id) AS corrected_by FROM {table.Name}"
            + (conditions.Count == 0 ? "" : " WHERE " + string.Join(" AND ", conditions))
            + string.Create(CultureInfo.InvariantCulture, $" ORDER BY {table.Name}.id DESC LIMIT {size + 1}");
        using var command = engine.Command(sql, [.. parameters]);
        using var reader = command.ExecuteReader();
        var row = new ReaderRow(reader);
        var lines = new List<FactLine>();
        while (reader.Read())
        {
            lines.Add(new(sort, table.FromRow(row, Attribution(row, table.Read.Count)), row.IsNone(table.Columns.Count) ? null : new FactId(row.Long(table.Columns.Count))));
        }

        return lines;
    }

    private (List<string> Conditions, List<(string Name, object? Value)> Parameters) Conditions(FactTable table, Place? place)
    {
        var conditions = new List<string>();
        var parameters = new List<(string, object?)>();
        void Where(string condition, string name, object? value)
        {
            if (value is not (null or ""))
            {
                conditions.Add(condition);
                parameters.Add((name, value));
            }
        }

        Where(Any(table.Places, c => $"\"{c}\" = @place"), "@place", place?.Id.Value);
        Where("lower(\"by\") = lower(@by)", "@by", filter.By?.Trim());
        Where("lower(source) = lower(@source)", "@source", filter.Source?.Trim());
        Where(Any(["source_key", "note", .. table.Words], c => $"lower(\"{c}\") LIKE lower(@text) ESCAPE '!'"), "@text", Pattern(filter.Text));
        Where($"{table.Moment} >= @from", "@from", filter.From?.ToMicros());
        Where($"{table.Moment} < @until", "@until", filter.Until?.ToMicros());
        Where("id < @before", "@before", filter.Before?.Value);
        if (filter.Correcting)
        {
            conditions.Add("corrects IS NOT NULL");
        }

        return (conditions, parameters);
    }

    private static string Any(IEnumerable<string> columns, Func<string, string> holds) => "(" + string.Join(" OR ", columns.Select(holds)) + ")";

    private static string? Pattern(string? words) => string.IsNullOrWhiteSpace(words) ? null
        : "%" + words.Trim().Replace("!", "!!", StringComparison.Ordinal).Replace("%", "!%", StringComparison.Ordinal).Replace("_", "!_", StringComparison.Ordinal) + "%";

    private static Attribution Attribution(Row row, int first) =>
        new(row.Moment(first + 3), row.Text(first), row.Text(first + 1), row.Text(first + 2), row.Corrects(), row.TextOrNone(first + 4));
}
