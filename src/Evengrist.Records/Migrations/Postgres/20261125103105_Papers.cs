using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Evengrist.Records.Migrations.Postgres
{
    /// <inheritdoc />
    public partial class Papers : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "paper",
                columns: table => new
                {
                    kind = table.Column<string>(type: "text", nullable: false),
                    code = table.Column<string>(type: "text", nullable: false),
                    version = table.Column<int>(type: "integer", nullable: false),
                    json = table.Column<string>(type: "text", nullable: false),
                    by = table.Column<string>(type: "text", nullable: false),
                    recorded_us = table.Column<long>(type: "bigint", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_paper", x => new { x.kind, x.code, x.version });
                    table.CheckConstraint("ck_paper_version", "version > 0");
                });

            // Contracts are papers of one kind from now on.
            migrationBuilder.Sql("INSERT INTO paper (kind, code, version, json, \"by\", recorded_us) SELECT 'contract', code, version, json, \"by\", recorded_us FROM contract");
            migrationBuilder.DropTable(name: "contract");
            foreach (var statement in AppendOnlyTables.ForPostgres(AppendOnlyTables.Papers))
            {
                migrationBuilder.Sql(statement);
            }
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "contract",
                columns: table => new
                {
                    code = table.Column<string>(type: "text", nullable: false),
                    version = table.Column<int>(type: "integer", nullable: false),
                    by = table.Column<string>(type: "text", nullable: false),
                    json = table.Column<string>(type: "text", nullable: false),
                    recorded_us = table.Column<long>(type: "bigint", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_contract", x => new { x.code, x.version });
                    table.CheckConstraint("ck_contract_version", "version > 0");
                });

            migrationBuilder.Sql("INSERT INTO contract (code, version, json, \"by\", recorded_us) SELECT code, version, json, \"by\", recorded_us FROM paper WHERE kind = 'contract'");
            migrationBuilder.DropTable(name: "paper");
            foreach (var statement in AppendOnlyTables.ForPostgres(AppendOnlyTables.Contracts))
            {
                migrationBuilder.Sql(statement);
            }
        }
    }
}
