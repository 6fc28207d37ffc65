using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Seasonwright.Store.Migrations
{
    /// <inheritdoc />
    public partial class Lifts : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "lift_tests",
                columns: table => new
                {
                    club_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    test_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    person_id = table.Column<string>(type: "TEXT", nullable: false),
                    exercise_id = table.Column<string>(type: "TEXT", nullable: false),
                    day = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    amount = table.Column<decimal>(type: "TEXT", nullable: false),
                    unit = table.Column<string>(type: "TEXT", nullable: false),
                    repetitions = table.Column<int>(type: "INTEGER", nullable: true),
                    velocity = table.Column<decimal>(type: "TEXT", nullable: true),
                    recorded_utc = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_lift_tests", x => new { x.club_id, x.test_id });
                    table.ForeignKey(
                        name: "FK_lift_tests_athletes_club_id_person_id",
                        columns: x => new { x.club_id, x.person_id },
                        principalTable: "athletes",
                        principalColumns: new[] { "club_id", "person_id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_lift_tests_club_id_person_id",
                table: "lift_tests",
                columns: new[] { "club_id", "person_id" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "lift_tests");
        }
    }
}
