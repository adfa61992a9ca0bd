using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Evengrist.Records.Migrations.Sqlite
{
    /// <inheritdoc />
    public partial class Tables : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "contract",
                columns: table => new
                {
                    code = table.Column<string>(type: "TEXT", nullable: false),
                    version = table.Column<int>(type: "INTEGER", nullable: false),
                    json = table.Column<string>(type: "TEXT", nullable: false),
                    by = table.Column<string>(type: "TEXT", nullable: false),
                    recorded_us = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_contract", x => new { x.code, x.version });
                    table.CheckConstraint("ck_contract_version", "version > 0");
                });

            migrationBuilder.CreateTable(
                name: "place",
                columns: table => new
                {
                    id = table.Column<long>(type: "INTEGER", nullable: false),
                    number = table.Column<int>(type: "INTEGER", nullable: false),
                    code = table.Column<string>(type: "TEXT", nullable: false),
                    kind = table.Column<int>(type: "INTEGER", nullable: false),
                    name = table.Column<string>(type: "TEXT", nullable: false),
                    material = table.Column<string>(type: "TEXT", nullable: false),
                    capacity_g = table.Column<long>(type: "INTEGER", nullable: true),
                    of = table.Column<string>(type: "TEXT", nullable: false),
                    core_share = table.Column<double>(type: "REAL", nullable: false),
                    stirred_g = table.Column<long>(type: "INTEGER", nullable: false),
                    by = table.Column<string>(type: "TEXT", nullable: false),
                    source = table.Column<string>(type: "TEXT", nullable: false),
                    source_key = table.Column<string>(type: "TEXT", nullable: false),
                    recorded_us = table.Column<long>(type: "INTEGER", nullable: false),
                    corrects = table.Column<long>(type: "INTEGER", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_place", x => x.id);
                    table.UniqueConstraint("AK_place_number", x => x.number);
                    table.CheckConstraint("ck_place_capacity", "capacity_g > 0");
                    table.CheckConstraint("ck_place_core", "core_share >= 0 AND core_share <= 1");
                    table.CheckConstraint("ck_place_corrects", "corrects < id");
                    table.CheckConstraint("ck_place_id", "id > 0");
                    table.CheckConstraint("ck_place_number", "number > 0");
                    table.CheckConstraint("ck_place_source_key", "length(source_key) > 0");
                    table.CheckConstraint("ck_place_stirred", "stirred_g >= 0");
                    table.ForeignKey(
                        name: "FK_place_place_corrects",
                        column: x => x.corrects,
                        principalTable: "place",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "setting",
                columns: table => new
                {
                    key = table.Column<string>(type: "TEXT", nullable: false),
                    value = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_setting", x => x.key);
                });

            migrationBuilder.CreateTable(
                name: "connection",
                columns: table => new
                {
                    id = table.Column<long>(type: "INTEGER", nullable: false),
                    from_place = table.Column<int>(type: "INTEGER", nullable: false),
                    to_place = table.Column<int>(type: "INTEGER", nullable: false),
                    by = table.Column<string>(type: "TEXT", nullable: false),
                    source = table.Column<string>(type: "TEXT", nullable: false),
                    source_key = table.Column<string>(type: "TEXT", nullable: false),
                    recorded_us = table.Column<long>(type: "INTEGER", nullable: false),
                    corrects = table.Column<long>(type: "INTEGER", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_connection", x => x.id);
                    table.CheckConstraint("ck_connection_corrects", "corrects < id");
                    table.CheckConstraint("ck_connection_ends", "from_place <> to_place");
                    table.CheckConstraint("ck_connection_id", "id > 0");
                    table.CheckConstraint("ck_connection_source_key", "length(source_key) > 0");
                    table.ForeignKey(
                        name: "FK_connection_connection_corrects",
                        column: x => x.corrects,
                        principalTable: "connection",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_connection_place_from_place",
                        column: x => x.from_place,
                        principalTable: "place",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_connection_place_to_place",
                        column: x => x.to_place,
                        principalTable: "place",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "happening",
                columns: table => new
                {
                    id = table.Column<long>(type: "INTEGER", nullable: false),
                    place = table.Column<int>(type: "INTEGER", nullable: false),
                    at_us = table.Column<long>(type: "INTEGER", nullable: false),
                    kind = table.Column<int>(type: "INTEGER", nullable: false),
                    text = table.Column<string>(type: "TEXT", nullable: false),
                    by = table.Column<string>(type: "TEXT", nullable: false),
                    source = table.Column<string>(type: "TEXT", nullable: false),
                    source_key = table.Column<string>(type: "TEXT", nullable: false),
                    recorded_us = table.Column<long>(type: "INTEGER", nullable: false),
                    corrects = table.Column<long>(type: "INTEGER", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_happening", x => x.id);
                    table.CheckConstraint("ck_happening_corrects", "corrects < id");
                    table.CheckConstraint("ck_happening_id", "id > 0");
                    table.CheckConstraint("ck_happening_kind", "kind > 0");
                    table.CheckConstraint("ck_happening_source_key", "length(source_key) > 0");
                    table.ForeignKey(
                        name: "FK_happening_happening_corrects",
                        column: x => x.corrects,
                        principalTable: "happening",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_happening_place_place",
                        column: x => x.place,
                        principalTable: "place",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "movement",
                columns: table => new
                {
                    id = table.Column<long>(type: "INTEGER", nullable: false),
                    from_place = table.Column<int>(type: "INTEGER", nullable: false),
                    to_place = table.Column<int>(type: "INTEGER", nullable: false),
                    mass_g = table.Column<long>(type: "INTEGER", nullable: false),
                    at_us = table.Column<long>(type: "INTEGER", nullable: false),
                    until_us = table.Column<long>(type: "INTEGER", nullable: false),
                    by = table.Column<string>(type: "TEXT", nullable: false),
                    source = table.Column<string>(type: "TEXT", nullable: false),
                    source_key = table.Column<string>(type: "TEXT", nullable: false),
                    recorded_us = table.Column<long>(type: "INTEGER", nullable: false),
                    corrects = table.Column<long>(type: "INTEGER", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_movement", x => x.id);
                    table.CheckConstraint("ck_movement_corrects", "corrects < id");
                    table.CheckConstraint("ck_movement_ends", "from_place <> to_place");
                    table.CheckConstraint("ck_movement_id", "id > 0");
                    table.CheckConstraint("ck_movement_mass", "mass_g >= 0");
                    table.CheckConstraint("ck_movement_source_key", "length(source_key) > 0");
                    table.CheckConstraint("ck_movement_time", "until_us >= at_us");
                    table.ForeignKey(
                        name: "FK_movement_movement_corrects",
                        column: x => x.corrects,
                        principalTable: "movement",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_movement_place_from_place",
                        column: x => x.from_place,
                        principalTable: "place",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_movement_place_to_place",
                        column: x => x.to_place,
                        principalTable: "place",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "reading",
                columns: table => new
                {
                    id = table.Column<long>(type: "INTEGER", nullable: false),
                    place = table.Column<int>(type: "INTEGER", nullable: false),
                    at_us = table.Column<long>(type: "INTEGER", nullable: false),
                    what = table.Column<int>(type: "INTEGER", nullable: false),
                    value = table.Column<string>(type: "TEXT", nullable: false),
                    unit = table.Column<string>(type: "TEXT", nullable: false),
                    basis_pct = table.Column<string>(type: "TEXT", nullable: true),
                    method = table.Column<string>(type: "TEXT", nullable: false),
                    instrument = table.Column<string>(type: "TEXT", nullable: false),
                    standard_uncertainty = table.Column<string>(type: "TEXT", nullable: true),
                    by = table.Column<string>(type: "TEXT", nullable: false),
                    source = table.Column<string>(type: "TEXT", nullable: false),
                    source_key = table.Column<string>(type: "TEXT", nullable: false),
                    recorded_us = table.Column<long>(type: "INTEGER", nullable: false),
                    corrects = table.Column<long>(type: "INTEGER", nullable: true),
                    note = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_reading", x => x.id);
                    table.CheckConstraint("ck_reading_corrects", "corrects < id");
                    table.CheckConstraint("ck_reading_id", "id > 0");
                    table.CheckConstraint("ck_reading_source_key", "length(source_key) > 0");
                    table.CheckConstraint("ck_reading_what", "what > 0");
                    table.ForeignKey(
                        name: "FK_reading_place_place",
                        column: x => x.place,
                        principalTable: "place",
                        principalColumn: "number",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_reading_reading_corrects",
                        column: x => x.corrects,
                        principalTable: "reading",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_connection_corrects",
                table: "connection",
                column: "corrects",
                unique: true,
                filter: "corrects IS NOT NULL");

            migrationBuilder.CreateIndex(
                name: "IX_connection_source_source_key",
                table: "connection",
                columns: new[] { "source", "source_key" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_happening_corrects",
                table: "happening",
                column: "corrects",
                unique: true,
                filter: "corrects IS NOT NULL");

            migrationBuilder.CreateIndex(
                name: "IX_happening_source_source_key",
                table: "happening",
                columns: new[] { "source", "source_key" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_movement_corrects",
                table: "movement",
                column: "corrects",
                unique: true,
                filter: "corrects IS NOT NULL");

            migrationBuilder.CreateIndex(
                name: "IX_movement_source_source_key",
                table: "movement",
                columns: new[] { "source", "source_key" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_place_code",
                table: "place",
                column: "code",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_place_corrects",
                table: "place",
                column: "corrects",
                unique: true,
                filter: "corrects IS NOT NULL");

            migrationBuilder.CreateIndex(
                name: "IX_place_source_source_key",
                table: "place",
                columns: new[] { "source", "source_key" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_reading_corrects",
                table: "reading",
                column: "corrects",
                unique: true,
                filter: "corrects IS NOT NULL");

            migrationBuilder.CreateIndex(
                name: "IX_reading_source_source_key",
                table: "reading",
                columns: new[] { "source", "source_key" },
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "connection");

            migrationBuilder.DropTable(
                name: "contract");

            migrationBuilder.DropTable(
                name: "happening");

            migrationBuilder.DropTable(
                name: "movement");

            migrationBuilder.DropTable(
                name: "reading");

            migrationBuilder.DropTable(
                name: "setting");

            migrationBuilder.DropTable(
                name: "place");
        }
    }
}
