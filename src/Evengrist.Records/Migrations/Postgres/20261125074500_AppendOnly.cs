using Evengrist.Records.Model;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace Evengrist.Records.Migrations.Postgres;

/// <summary>The database itself refuses to change or delete a fact. The model is as before, so there is no target model here.</summary>
[DbContext(typeof(PostgresContext))]
[Migration("20261125074500_AppendOnly")]
public sealed class AppendOnly : Migration
{
    protected override void Up(MigrationBuilder migrationBuilder) => Run(migrationBuilder, AppendOnlyTables.ForPostgres(AppendOnlyTables.All).Prepend(AppendOnlyTables.RefusalForPostgres));

    protected override void Down(MigrationBuilder migrationBuilder) => Run(migrationBuilder, AppendOnlyTables.BackForPostgres());

    private static void Run(MigrationBuilder builder, IEnumerable<string> statements)
    {
        foreach (var statement in statements)
        {
            builder.Sql(statement);
        }
    }
}
