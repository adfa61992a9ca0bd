namespace Evengrist.Records.Migrations;

/// <summary>The tables whose rows may be added and never changed, and the SQL that makes both engines refuse anything else.</summary>
internal static class AppendOnlyTables
{
    private const string Advice = "is append only: put a mistake right by a further fact that names the first";

    /// <summary>The tables of the first version.</summary>
    public static IReadOnlyList<(string Table, string Same)> All { get; } =
        [Facts("place"), Facts("connection"), Facts("movement"), Facts("reading"), Facts("happening"), .. Contracts];

    public static IReadOnlyList<(string Table, string Same)> Contracts => [("contract", "code = NEW.code AND version = NEW.version")];

    public static IReadOnlyList<(string Table, string Same)> Papers => [("paper", "kind = NEW.kind AND code = NEW.code AND version = NEW.version")];

    /// <summary>Update and delete are refused; so is an insert that would replace a row, which SQLite does without asking the delete trigger.</summary>
    public static IEnumerable<string> ForSqlite(IEnumerable<(string Table, string Same)> tables) => tables.SelectMany(t => new[]
    {
        $"CREATE TRIGGER {t.Table}_no_update BEFORE UPDATE ON {t.Table} BEGIN SELECT RAISE(ABORT, '{t.Table} {Advice}'); END",
        $"CREATE TRIGGER {t.Table}_no_delete BEFORE DELETE ON {t.Table} BEGIN SELECT RAISE(ABORT, '{t.Table} {Advice}'); END",
        $"CREATE TRIGGER {t.Table}_no_replace BEFORE INSERT ON {t.Table} WHEN EXISTS (SELECT 1 FROM {t.Table} WHERE {t.Same}) BEGIN SELECT RAISE(ABORT, '{t.Table} {Advice}'); END",
    });

    public static IEnumerable<string> ForPostgres(IEnumerable<(string Table, string Same)> tables) =>
        tables.Select(t => $"CREATE TRIGGER {t.Table}_append_only BEFORE UPDATE OR DELETE OR TRUNCATE ON {t.Table} FOR EACH STATEMENT EXECUTE FUNCTION refuse_change()");

    /// <summary>What the triggers of PostgreSQL call.</summary>
    public static string RefusalForPostgres => $"CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN RAISE EXCEPTION '% {Advice}', TG_TABLE_NAME; END $$";

    public static IEnumerable<string> BackForSqlite() => All.SelectMany(t =>
        new[] { "update", "delete", "replace" }.Select(verb => $"DROP TRIGGER {t.Table}_no_{verb}"));

    public static IEnumerable<string> BackForPostgres() =>
        All.Select(t => $"DROP TRIGGER {t.Table}_append_only ON {t.Table}").Append("DROP FUNCTION refuse_change()");

    private static (string Table, string Same) Facts(string table) => (table, "id = NEW.id OR (source = NEW.source AND source_key = NEW.source_key)");
}
