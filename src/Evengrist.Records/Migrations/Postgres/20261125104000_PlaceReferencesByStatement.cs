using Evengrist.Records.Model;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace Evengrist.Records.Migrations.Postgres;

/// <summary>References to places are checked once a statement. The model still says what refers to what, so there is no target model here.</summary>
[DbContext(typeof(PostgresContext))]
[Migration("20261125104000_PlaceReferencesByStatement")]
public sealed class PlaceReferencesByStatement : Migration
{
    protected override void Up(MigrationBuilder migrationBuilder) => Run(migrationBuilder, PlaceReferences.Up());

    protected override void Down(MigrationBuilder migrationBuilder) => Run(migrationBuilder, PlaceReferences.Down());

    private static void Run(MigrationBuilder builder, IEnumerable<string> statements)
    {
        foreach (var statement in statements)
        {
            builder.Sql(statement);
        }
    }
}
