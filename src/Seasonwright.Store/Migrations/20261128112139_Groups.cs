using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Seasonwright.Store.Migrations
{
    /// <inheritdoc />
    internal partial class Groups : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "group_places",
                columns: table => new
                {
                    club_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    person_id = table.Column<string>(type: "TEXT", nullable: false),
                    season_stream_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    group_id = table.Column<string>(type: "TEXT", nullable: false),
                    from_day = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    to_day = table.Column<DateOnly>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_group_places", x => new { x.club_id, x.person_id, x.season_stream_id, x.group_id });
                    table.ForeignKey(
                        name: "FK_group_places_athletes_club_id_person_id",
                        columns: x => new { x.club_id, x.person_id },
                        principalTable: "athletes",
                        principalColumns: new[] { "club_id", "person_id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "FK_group_places_streams_club_id_season_stream_id",
                        columns: x => new { x.club_id, x.season_stream_id },
                        principalTable: "streams",
                        principalColumns: new[] { "club_id", "stream_id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_group_places_club_id_season_stream_id",
                table: "group_places",
                columns: new[] { "club_id", "season_stream_id" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "group_places");
        }
    }
}
