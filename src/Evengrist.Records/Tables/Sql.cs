namespace Evengrist.Records.Tables;

/// <summary>The few statements both engines share.</summary>
internal static class Sql
{
    public static string Last { get; } = "SELECT max(id) FROM (" + string.Join(" UNION ALL ", FactTable.All.Select(t => $"SELECT max(id) AS id FROM {t.Name}")) + ") AS newest";

    public static string Names(IEnumerable<string> columns) => string.Join(", ", columns.Select(c => $"\"{c}\""));

    public static string Span(FactTable table, string after, string upto) => $"SELECT {Names(table.Read)} FROM {table.Name} WHERE id > {after} AND id <= {upto}";

    public static string Insert(FactTable table) =>
        $"INSERT INTO {table.Name} ({Names(table.Columns)}) VALUES ({string.Join(", ", table.Columns.Select(c => "@" + c))})";

    /// <summary>Facts of one source with any of some keys; how "any of" is said differs between engines.</summary>
    public static string Known(FactTable table, string anyOfKeys) =>
        $"SELECT {Names(table.Read)}, source_key, note FROM {table.Name} WHERE source = @source AND source_key {anyOfKeys}";
}
