using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Seasonwright.Store.Migrations
{
    /// <inheritdoc />
    public partial class Runs : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "run_tests",
                columns: table => new
                {
                    club_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    test_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    person_id = table.Column<string>(type: "TEXT", nullable: false),
                    day = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    metres = table.Column<int>(type: "INTEGER", nullable: false),
                    seconds = table.Column<int>(type: "INTEGER", nullable: false),
                    recorded_utc = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_run_tests", x => new { x.club_id, x.test_id });
                    table.ForeignKey(
                        name: "FK_run_tests_athletes_club_id_person_id",
                        columns: x => new { x.club_id, x.person_id },
                        principalTable: "athletes",
                        principalColumns: new[] { "club_id", "person_id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_run_tests_club_id_person_id",
                table: "run_tests",
                columns: new[] { "club_id", "person_id" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "run_tests");
        }
    }
}
