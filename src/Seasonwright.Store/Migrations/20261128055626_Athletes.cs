using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Seasonwright.Store.Migrations
{
    /// <inheritdoc />
    internal partial class Athletes : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "athletes",
                columns: table => new
                {
                    club_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    person_id = table.Column<string>(type: "TEXT", nullable: false),
                    family = table.Column<string>(type: "TEXT", nullable: false),
                    given = table.Column<string>(type: "TEXT", nullable: false),
                    number = table.Column<string>(type: "TEXT", nullable: true),
                    positions = table.Column<string>(type: "TEXT", nullable: false),
                    born = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    training_years = table.Column<int>(type: "INTEGER", nullable: true),
                    training_on = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    created_utc = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_athletes", x => new { x.club_id, x.person_id });
                });

            migrationBuilder.CreateTable(
                name: "absences",
                columns: table => new
                {
                    club_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    absence_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    person_id = table.Column<string>(type: "TEXT", nullable: false),
                    kind = table.Column<string>(type: "TEXT", nullable: false),
                    first_day = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    last_day = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    minutes = table.Column<int>(type: "INTEGER", nullable: true),
                    rpe = table.Column<decimal>(type: "TEXT", nullable: true),
                    au = table.Column<int>(type: "INTEGER", nullable: true),
                    recorded_utc = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_absences", x => new { x.club_id, x.absence_id });
                    table.ForeignKey(
                        name: "FK_absences_athletes_club_id_person_id",
                        columns: x => new { x.club_id, x.person_id },
                        principalTable: "athletes",
                        principalColumns: new[] { "club_id", "person_id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "availability_reports",
                columns: table => new
                {
                    club_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    report_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    person_id = table.Column<string>(type: "TEXT", nullable: false),
                    state = table.Column<string>(type: "TEXT", nullable: false),
                    tags = table.Column<string>(type: "TEXT", nullable: false),
                    most_minutes = table.Column<int>(type: "INTEGER", nullable: true),
                    from_day = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    review_day = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    reporter_role = table.Column<string>(type: "TEXT", nullable: false),
                    is_licensed_clinician = table.Column<bool>(type: "INTEGER", nullable: false),
                    reporter_name = table.Column<string>(type: "TEXT", nullable: true),
                    how = table.Column<string>(type: "TEXT", nullable: false),
                    recorded_by = table.Column<string>(type: "TEXT", nullable: false),
                    recorded_utc = table.Column<long>(type: "INTEGER", nullable: false),
                    is_confirmed = table.Column<bool>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_availability_reports", x => new { x.club_id, x.report_id });
                    table.ForeignKey(
                        name: "FK_availability_reports_athletes_club_id_person_id",
                        columns: x => new { x.club_id, x.person_id },
                        principalTable: "athletes",
                        principalColumns: new[] { "club_id", "person_id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "body_masses",
                columns: table => new
                {
                    club_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    weighing_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    person_id = table.Column<string>(type: "TEXT", nullable: false),
                    day = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    amount = table.Column<decimal>(type: "TEXT", nullable: false),
                    unit = table.Column<string>(type: "TEXT", nullable: false),
                    pounds_over = table.Column<decimal>(type: "TEXT", nullable: false),
                    recorded_utc = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_body_masses", x => new { x.club_id, x.weighing_id });
                    table.ForeignKey(
                        name: "FK_body_masses_athletes_club_id_person_id",
                        columns: x => new { x.club_id, x.person_id },
                        principalTable: "athletes",
                        principalColumns: new[] { "club_id", "person_id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "memberships",
                columns: table => new
                {
                    club_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    person_id = table.Column<string>(type: "TEXT", nullable: false),
                    team_stream_id = table.Column<Guid>(type: "TEXT", nullable: false),
                    squad = table.Column<string>(type: "TEXT", nullable: false),
                    from_day = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    to_day = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    lead_weekdays = table.Column<string>(type: "TEXT", nullable: false),
                    lead_dates = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_memberships", x => new { x.club_id, x.person_id, x.team_stream_id, x.squad, x.from_day });
                    table.ForeignKey(
                        name: "FK_memberships_athletes_club_id_person_id",
                        columns: x => new { x.club_id, x.person_id },
                        principalTable: "athletes",
                        principalColumns: new[] { "club_id", "person_id" },
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "FK_memberships_streams_club_id_team_stream_id",
                        columns: x => new { x.club_id, x.team_stream_id },
                        principalTable: "streams",
                        principalColumns: new[] { "club_id", "stream_id" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_absences_club_id_person_id",
                table: "absences",
                columns: new[] { "club_id", "person_id" });

            migrationBuilder.CreateIndex(
                name: "IX_availability_reports_club_id_person_id",
                table: "availability_reports",
                columns: new[] { "club_id", "person_id" });

            migrationBuilder.CreateIndex(
                name: "IX_body_masses_club_id_person_id",
                table: "body_masses",
                columns: new[] { "club_id", "person_id" });

            migrationBuilder.CreateIndex(
                name: "IX_memberships_club_id_team_stream_id",
                table: "memberships",
                columns: new[] { "club_id", "team_stream_id" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "absences");

            migrationBuilder.DropTable(
                name: "availability_reports");

            migrationBuilder.DropTable(
                name: "body_masses");

            migrationBuilder.DropTable(
                name: "memberships");

            migrationBuilder.DropTable(
                name: "athletes");
        }
    }
}
