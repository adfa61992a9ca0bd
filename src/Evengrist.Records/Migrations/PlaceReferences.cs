namespace Evengrist.Records.Migrations;

/// <summary>
/// That what a fact refers to is a place, checked on PostgreSQL once for all rows of a statement: a foreign key asks for every row and column by
/// itself, which slows large batches. Places are never changed or deleted, so that inserts are all there is to check.
/// </summary>
internal static class PlaceReferences
{
    private static readonly (string Table, string[] Columns)[] All =
        [("connection", ["from_place", "to_place"]), ("movement", ["from_place", "to_place"]), ("reading", ["place"]), ("happening", ["place"])];

    public static IEnumerable<string> Up() => All.SelectMany(t => t.Columns.Select(c => $"ALTER TABLE {t.Table} DROP CONSTRAINT \"{Key(t.Table, c)}\"").Concat(
    [
        $"""
        CREATE FUNCTION {t.Table}_refers() RETURNS trigger LANGUAGE plpgsql AS $$
        BEGIN
            IF {string.Join(" OR ", t.Columns.Select(c => $"EXISTS (SELECT 1 FROM news LEFT JOIN place ON place.number = news.{c} WHERE place.number IS NULL)"))} THEN
                RAISE EXCEPTION '{t.Table} refers to a place that is not there' USING ERRCODE = 'foreign_key_violation';
            END IF;
            RETURN NULL;
        END $$
        """,
        $"CREATE TRIGGER {t.Table}_refers AFTER INSERT ON {t.Table} REFERENCING NEW TABLE AS news FOR EACH STATEMENT EXECUTE FUNCTION {t.Table}_refers()",
    ]));

    public static IEnumerable<string> Down() => All.SelectMany(t => t.Columns.Select(c => $"ALTER TABLE {t.Table} ADD CONSTRAINT \"{Key(t.Table, c)}\" FOREIGN KEY ({c}) REFERENCES place (number) ON DELETE RESTRICT").Concat(
        [$"DROP TRIGGER {t.Table}_refers ON {t.Table}", $"DROP FUNCTION {t.Table}_refers()"]));

    private static string Key(string table, string column) => $"FK_{table}_place_{column}";
}
