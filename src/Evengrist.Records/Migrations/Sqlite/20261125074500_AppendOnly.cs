using Evengrist.Records.Model;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace Evengrist.Records.Migrations.Sqlite;

/// <summary>The database itself refuses to change or delete a fact. The model is as before, so there is no target model here.</summary>
[DbContext(typeof(SqliteContext))]
[Migration("20261125074500_AppendOnly")]
public sealed class AppendOnly : Migration
{
    protected override void Up(MigrationBuilder migrationBuilder) => Run(migrationBuilder, AppendOnlyTables.ForSqlite(AppendOnlyTables.All));

    protected override void Down(MigrationBuilder migrationBuilder) => Run(migrationBuilder, AppendOnlyTables.BackForSqlite());

    private static void Run(MigrationBuilder builder, IEnumerable<string> statements)
    {
        foreach (var statement in statements)
        {
            builder.Sql(statement);
        }
    }
}
