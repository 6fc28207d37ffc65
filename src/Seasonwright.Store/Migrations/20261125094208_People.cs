using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Seasonwright.Store.Migrations
{
    /// <inheritdoc />
    internal partial class People : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "people",
                columns: table => new
                {
                    club_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    person_id = table.Column<string>(type: "TEXT", nullable: false),
                    display_name = table.Column<string>(type: "TEXT", nullable: false),
                    created_utc = table.Column<long>(type: "INTEGER", nullable: false),
                    is_local = table.Column<bool>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_people", x => new { x.club_id, x.person_id });
                });

            migrationBuilder.CreateTable(
                name: "preferences",
                columns: table => new
                {
                    club_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    person_id = table.Column<string>(type: "TEXT", nullable: false),
                    key = table.Column<string>(type: "TEXT", nullable: false),
                    json = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_preferences", x => new { x.club_id, x.person_id, x.key });
                    table.ForeignKey(
                        name: "FK_preferences_people_club_id_person_id",
                        columns: x => new { x.club_id, x.person_id },
                        principalTable: "people",
                        principalColumns: new[] { "club_id", "person_id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_people_club_id",
                table: "people",
                column: "club_id",
                unique: true,
                filter: "is_local = 1");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "preferences");

            migrationBuilder.DropTable(
                name: "people");
        }
    }
}
