using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Seasonwright.Store.Migrations
{
    /// <inheritdoc />
    internal partial class Log : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "removals",
                columns: table => new
                {
                    club_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    stream_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    kind = table.Column<string>(type: "TEXT", nullable: false),
                    team_stream_id = table.Column<Guid>(type: "TEXT", nullable: true),
                    removed_by = table.Column<string>(type: "TEXT", nullable: false),
                    removed_utc = table.Column<long>(type: "INTEGER", nullable: false),
                    entries = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_removals", x => new { x.club_id, x.stream_id });
                });

            migrationBuilder.CreateTable(
                name: "streams",
                columns: table => new
                {
                    club_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    stream_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    kind = table.Column<string>(type: "TEXT", nullable: false),
                    title = table.Column<string>(type: "TEXT", nullable: false),
                    created_utc = table.Column<long>(type: "INTEGER", nullable: false),
                    team_stream_id = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_streams", x => new { x.club_id, x.stream_id });
                    table.ForeignKey(
                        name: "FK_streams_streams_club_id_team_stream_id",
                        columns: x => new { x.club_id, x.team_stream_id },
                        principalTable: "streams",
                        principalColumns: new[] { "club_id", "stream_id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "log_entries",
                columns: table => new
                {
                    club_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    stream_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    number = table.Column<long>(type: "INTEGER", nullable: false),
                    gesture_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    index_in_gesture = table.Column<int>(type: "INTEGER", nullable: false),
                    author = table.Column<string>(type: "TEXT", nullable: false),
                    instant_utc = table.Column<long>(type: "INTEGER", nullable: false),
                    wire_version = table.Column<int>(type: "INTEGER", nullable: false),
                    edit_json = table.Column<string>(type: "TEXT", nullable: false),
                    step_json = table.Column<string>(type: "TEXT", nullable: false),
                    hash_after = table.Column<string>(type: "TEXT", nullable: false),
                    undoes = table.Column<long>(type: "INTEGER", nullable: true),
                    redoes = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_log_entries", x => new { x.club_id, x.stream_id, x.number });
                    table.ForeignKey(
                        name: "FK_log_entries_streams_club_id_stream_id",
                        columns: x => new { x.club_id, x.stream_id },
                        principalTable: "streams",
                        principalColumns: new[] { "club_id", "stream_id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "snapshots",
                columns: table => new
                {
                    club_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    stream_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    number = table.Column<long>(type: "INTEGER", nullable: false),
                    wire_version = table.Column<int>(type: "INTEGER", nullable: false),
                    json = table.Column<string>(type: "TEXT", nullable: false),
                    hash = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_snapshots", x => new { x.club_id, x.stream_id, x.number });
                    table.ForeignKey(
                        name: "FK_snapshots_streams_club_id_stream_id",
                        columns: x => new { x.club_id, x.stream_id },
                        principalTable: "streams",
                        principalColumns: new[] { "club_id", "stream_id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_log_entries_club_id_stream_id_gesture_id_index_in_gesture",
                table: "log_entries",
                columns: new[] { "club_id", "stream_id", "gesture_id", "index_in_gesture" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_streams_club_id_team_stream_id",
                table: "streams",
                columns: new[] { "club_id", "team_stream_id" });

            // "SWrt": tells our files from every other SQLite file.
            migrationBuilder.Sql("PRAGMA application_id = 1398239860;");

            // The file itself keeps the log append-only, whatever the program above it does.
            migrationBuilder.Sql("""
                CREATE TRIGGER log_entries_never_change BEFORE UPDATE ON log_entries
                BEGIN SELECT RAISE(ABORT, 'log entries never change'); END;
                """);
            migrationBuilder.Sql("""
                CREATE TRIGGER log_entries_go_only_with_a_tombstone BEFORE DELETE ON log_entries
                WHEN NOT EXISTS (SELECT 1 FROM removals WHERE club_id = OLD.club_id AND stream_id = OLD.stream_id)
                BEGIN SELECT RAISE(ABORT, 'log entries go only with their removed stream'); END;
                """);
            migrationBuilder.Sql("""
                CREATE TRIGGER removed_streams_stay_away BEFORE INSERT ON streams
                WHEN EXISTS (SELECT 1 FROM removals WHERE club_id = NEW.club_id AND stream_id = NEW.stream_id)
                BEGIN SELECT RAISE(ABORT, 'a removed stream never comes back'); END;
                """);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "log_entries");

            migrationBuilder.DropTable(
                name: "removals");

            migrationBuilder.DropTable(
                name: "snapshots");

            migrationBuilder.DropTable(
                name: "streams");
        }
    }
}
