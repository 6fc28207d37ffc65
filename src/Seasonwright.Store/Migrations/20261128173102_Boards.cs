using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Seasonwright.Store.Migrations
{
    /// <inheritdoc />
    public partial class Boards : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "board_marks",
                columns: table => new
                {
                    club_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    mark_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    season_stream_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    session_id = table.Column<string>(type: "TEXT", nullable: false),
                    person_id = table.Column<string>(type: "TEXT", nullable: true),
                    mark_json = table.Column<string>(type: "TEXT", nullable: false),
                    received_utc = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_board_marks", x => new { x.club_id, x.mark_id });
                    table.ForeignKey(
                        name: "FK_board_marks_athletes_club_id_person_id",
                        columns: x => new { x.club_id, x.person_id },
                        principalTable: "athletes",
                        principalColumns: new[] { "club_id", "person_id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "FK_board_marks_streams_club_id_season_stream_id",
                        columns: x => new { x.club_id, x.season_stream_id },
                        principalTable: "streams",
                        principalColumns: new[] { "club_id", "stream_id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_board_marks_club_id_person_id",
                table: "board_marks",
                columns: new[] { "club_id", "person_id" });

            migrationBuilder.CreateIndex(
                name: "IX_board_marks_club_id_season_stream_id_session_id",
                table: "board_marks",
                columns: new[] { "club_id", "season_stream_id", "session_id" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "board_marks");
        }
    }
}
