using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Seasonwright.Store.Migrations
{
    /// <inheritdoc />
    internal partial class Squads : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "squad_members",
                columns: table => new
                {
                    club_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    team_stream_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    place = table.Column<int>(type: "INTEGER", nullable: false),
                    age = table.Column<int>(type: "INTEGER", nullable: true),
                    born = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    family = table.Column<string>(type: "TEXT", nullable: false),
                    given = table.Column<string>(type: "TEXT", nullable: false),
                    group_name = table.Column<string>(type: "TEXT", nullable: true),
                    height = table.Column<string>(type: "TEXT", nullable: true),
                    lifts_json = table.Column<string>(type: "TEXT", nullable: false),
                    mass = table.Column<string>(type: "TEXT", nullable: true),
                    number = table.Column<string>(type: "TEXT", nullable: true),
                    position = table.Column<string>(type: "TEXT", nullable: true),
                    remark = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_squad_members", x => new { x.club_id, x.team_stream_id, x.place });
                    table.ForeignKey(
                        name: "FK_squad_members_streams_club_id_team_stream_id",
                        columns: x => new { x.club_id, x.team_stream_id },
                        principalTable: "streams",
                        principalColumns: new[] { "club_id", "stream_id" },
                        onDelete: ReferentialAction.Cascade);
                });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "squad_members");
        }
    }
}
