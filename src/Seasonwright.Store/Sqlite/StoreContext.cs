using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using Seasonwright.Store.Log;
using Seasonwright.Store.People;

namespace Seasonwright.Store.Sqlite;

/// <summary>The tables. <c>club_id</c> leads every key; instants are UTC ticks, since not every database keeps an offset.</summary>
internal sealed class StoreContext(DbContextOptions<StoreContext> options) : DbContext(options)
{
    public DbSet<LogStream> Streams => Set<LogStream>();
    public DbSet<LogEntry> Entries => Set<LogEntry>();
    public DbSet<Removal> Removals => Set<Removal>();
    public DbSet<Snapshot> Snapshots => Set<Snapshot>();
    public DbSet<Person> People => Set<Person>();
    public DbSet<Preference> Preferences => Set<Preference>();
    public DbSet<SquadPlace> Squads => Set<SquadPlace>();
    public DbSet<AthleteRow> Athletes => Set<AthleteRow>();
    public DbSet<MembershipRow> Memberships => Set<MembershipRow>();
    public DbSet<GroupRow> Groups => Set<GroupRow>();
    public DbSet<AvailabilityRow> Availabilities => Set<AvailabilityRow>();
    public DbSet<AbsenceRow> Absences => Set<AbsenceRow>();
    public DbSet<BodyMassRow> BodyMasses => Set<BodyMassRow>();
    public DbSet<LiftTestRow> LiftTests => Set<LiftTestRow>();
    public DbSet<RunTestRow> RunTests => Set<RunTestRow>();
    public DbSet<BoardMarkRow> BoardMarks => Set<BoardMarkRow>();

    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        configurationBuilder.Properties<ClubId>().HaveConversion<ClubIdColumn>();
        configurationBuilder.Properties<StreamId>().HaveConversion<StreamIdColumn>();
        configurationBuilder.Properties<StreamKind>().HaveConversion<KindColumn>();
        configurationBuilder.Properties<DateTimeOffset>().HaveConversion<InstantColumn>();
    }

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.Entity<LogStream>(table =>
        {
            table.ToTable("streams").HasKey(row => new { row.Club, row.Id });
            table.Property(row => row.Club).HasColumnName("club_id");
            table.Property(row => row.Id).HasColumnName("stream_id");
            table.Property(row => row.Kind).HasColumnName("kind");
            table.Property(row => row.Title).HasColumnName("title");
            table.Property(row => row.Created).HasColumnName("created_utc");
            table.Property(row => row.Team).HasColumnName("team_stream_id");
            table.HasOne<LogStream>().WithMany().HasForeignKey(row => new { row.Club, row.Team }).OnDelete(DeleteBehavior.Restrict);
        });
        modelBuilder.Entity<LogEntry>(table =>
        {
            table.ToTable("log_entries").HasKey(row => new { row.Club, row.Stream, row.Number });
            table.HasIndex(row => new { row.Club, row.Stream, row.Gesture, row.IndexInGesture }).IsUnique();
            table.Property(row => row.Club).HasColumnName("club_id");
            table.Property(row => row.Stream).HasColumnName("stream_id");
            table.Property(row => row.Number).HasColumnName("number");
            table.Property(row => row.Gesture).HasColumnName("gesture_id");
            table.Property(row => row.IndexInGesture).HasColumnName("index_in_gesture");
            table.Property(row => row.Author).HasColumnName("author");
            table.Property(row => row.Instant).HasColumnName("instant_utc");
            table.Property(row => row.WireVersion).HasColumnName("wire_version");
            table.Property(row => row.EditJson).HasColumnName("edit_json");
            table.Property(row => row.StepJson).HasColumnName("step_json");
            table.Property(row => row.HashAfter).HasColumnName("hash_after");
            table.Property(row => row.Undoes).HasColumnName("undoes");
            table.Property(row => row.Redoes).HasColumnName("redoes");
            table.HasOne<LogStream>().WithMany().HasForeignKey(row => new { row.Club, row.Stream }).OnDelete(DeleteBehavior.Restrict);
        });
        modelBuilder.Entity<Removal>(table =>
        {
            table.ToTable("removals").HasKey(row => new { row.Club, row.Stream });
            table.Property(row => row.Club).HasColumnName("club_id");
            table.Property(row => row.Stream).HasColumnName("stream_id");
            table.Property(row => row.Kind).HasColumnName("kind");
            table.Property(row => row.Team).HasColumnName("team_stream_id");
            table.Property(row => row.RemovedBy).HasColumnName("removed_by");
            table.Property(row => row.Instant).HasColumnName("removed_utc");
            table.Property(row => row.Entries).HasColumnName("entries");
        });
        modelBuilder.Entity<Snapshot>(table =>
        {
            table.ToTable("snapshots").HasKey(row => new { row.Club, row.Stream, row.Number });
            table.Property(row => row.Club).HasColumnName("club_id");
            table.Property(row => row.Stream).HasColumnName("stream_id");
            table.Property(row => row.Number).HasColumnName("number");
            table.Property(row => row.WireVersion).HasColumnName("wire_version");
            table.Property(row => row.Json).HasColumnName("json");
            table.Property(row => row.Hash).HasColumnName("hash");
            table.HasOne<LogStream>().WithMany().HasForeignKey(row => new { row.Club, row.Stream }).OnDelete(DeleteBehavior.Cascade);
        });
        modelBuilder.Entity<Person>(table =>
        {
            table.ToTable("people").HasKey(row => new { row.Club, row.Id });
            table.HasIndex(row => row.Club).IsUnique().HasFilter("is_local = 1");
            table.Property(row => row.Club).HasColumnName("club_id");
            table.Property(row => row.Id).HasColumnName("person_id");
            table.Property(row => row.DisplayName).HasColumnName("display_name");
            table.Property(row => row.Created).HasColumnName("created_utc");
            table.Property(row => row.IsLocal).HasColumnName("is_local");
        });
        modelBuilder.Entity<Preference>(table =>
        {
            table.ToTable("preferences").HasKey(row => new { row.Club, row.Person, row.Key });
            table.Property(row => row.Club).HasColumnName("club_id");
            table.Property(row => row.Person).HasColumnName("person_id");
            table.Property(row => row.Key).HasColumnName("key");
            table.Property(row => row.Json).HasColumnName("json");
            table.HasOne<Person>().WithMany().HasForeignKey(row => new { row.Club, row.Person }).OnDelete(DeleteBehavior.Cascade);
        });
        modelBuilder.Entity<SquadPlace>(table =>
        {
            table.ToTable("squad_members").HasKey(row => new { row.Club, row.Team, row.Place });
            table.Property(row => row.Club).HasColumnName("club_id");
            table.Property(row => row.Team).HasColumnName("team_stream_id");
            table.Property(row => row.Place).HasColumnName("place").ValueGeneratedNever();
            table.ComplexProperty(row => row.Member, member =>
            {
                member.Property(row => row.Family).HasColumnName("family");
                member.Property(row => row.Given).HasColumnName("given");
                member.Property(row => row.Number).HasColumnName("number");
                member.Property(row => row.Position).HasColumnName("position");
                member.Property(row => row.Born).HasColumnName("born");
                member.Property(row => row.Age).HasColumnName("age");
                member.Property(row => row.Mass).HasColumnName("mass");
                member.Property(row => row.Height).HasColumnName("height");
                member.Property(row => row.Group).HasColumnName("group_name");
                member.Property(row => row.Remark).HasColumnName("remark");
                member.Property(row => row.LiftsJson).HasColumnName("lifts_json");
            });
            table.HasOne<LogStream>().WithMany().HasForeignKey(row => new { row.Club, row.Team }).OnDelete(DeleteBehavior.Cascade);
        });
        modelBuilder.Entity<AthleteRow>(table =>
        {
            table.ToTable("athletes").HasKey(row => new { row.Club, row.Person });
            table.Ignore(row => row.Value);
            table.Property(row => row.Club).HasColumnName("club_id");
            table.Property(row => row.Person).HasColumnName("person_id");
            table.Property(row => row.Family).HasColumnName("family");
            table.Property(row => row.Given).HasColumnName("given");
            table.Property(row => row.Number).HasColumnName("number");
            table.Property(row => row.Positions).HasColumnName("positions");
            table.Property(row => row.Born).HasColumnName("born");
            table.Property(row => row.TrainingYears).HasColumnName("training_years");
            table.Property(row => row.TrainingOn).HasColumnName("training_on");
            table.Property(row => row.Created).HasColumnName("created_utc");
        });
        modelBuilder.Entity<MembershipRow>(table =>
        {
            table.ToTable("memberships").HasKey(row => new { row.Club, row.Person, row.Team, row.Squad, row.From });
            table.Ignore(row => row.Value);
            table.Property(row => row.Club).HasColumnName("club_id");
            table.Property(row => row.Person).HasColumnName("person_id");
            table.Property(row => row.Team).HasColumnName("team_stream_id");
            table.Property(row => row.Squad).HasColumnName("squad");
            table.Property(row => row.From).HasColumnName("from_day");
            table.Property(row => row.To).HasColumnName("to_day");
            table.Property(row => row.LeadWeekdays).HasColumnName("lead_weekdays");
            table.Property(row => row.LeadDates).HasColumnName("lead_dates");
            table.HasOne<AthleteRow>().WithMany().HasForeignKey(row => new { row.Club, row.Person }).OnDelete(DeleteBehavior.Cascade);
            table.HasOne<LogStream>().WithMany().HasForeignKey(row => new { row.Club, row.Team }).OnDelete(DeleteBehavior.Cascade);
        });
        modelBuilder.Entity<GroupRow>(table =>
        {
            // A group holds a person once a season.
            table.ToTable("group_places").HasKey(row => new { row.Club, row.Person, row.Season, row.Group });
            table.Ignore(row => row.Value);
            table.Property(row => row.Club).HasColumnName("club_id");
            table.Property(row => row.Person).HasColumnName("person_id");
            table.Property(row => row.Season).HasColumnName("season_stream_id");
            table.Property(row => row.Group).HasColumnName("group_id");
            table.Property(row => row.From).HasColumnName("from_day");
            table.Property(row => row.To).HasColumnName("to_day");
            table.HasOne<AthleteRow>().WithMany().HasForeignKey(row => new { row.Club, row.Person }).OnDelete(DeleteBehavior.Cascade);
            table.HasOne<LogStream>().WithMany().HasForeignKey(row => new { row.Club, row.Season }).OnDelete(DeleteBehavior.Cascade);
        });
        modelBuilder.Entity<AvailabilityRow>(table =>
        {
            table.ToTable("availability_reports").HasKey(row => new { row.Club, row.Id });
            table.Ignore(row => row.Value);
            table.Property(row => row.Club).HasColumnName("club_id");
            table.Property(row => row.Id).HasColumnName("report_id").ValueGeneratedNever();
            table.Property(row => row.Person).HasColumnName("person_id");
            table.Property(row => row.State).HasColumnName("state");
            table.Property(row => row.Tags).HasColumnName("tags");
            table.Property(row => row.MostMinutes).HasColumnName("most_minutes");
            table.Property(row => row.From).HasColumnName("from_day");
            table.Property(row => row.ReviewOn).HasColumnName("review_day");
            table.Property(row => row.Role).HasColumnName("reporter_role");
            table.Property(row => row.IsLicensedClinician).HasColumnName("is_licensed_clinician");
            table.Property(row => row.Reporter).HasColumnName("reporter_name");
            table.Property(row => row.How).HasColumnName("how");
            table.Property(row => row.RecordedBy).HasColumnName("recorded_by");
            table.Property(row => row.Recorded).HasColumnName("recorded_utc");
            table.Property(row => row.IsConfirmed).HasColumnName("is_confirmed");
            table.HasOne<AthleteRow>().WithMany().HasForeignKey(row => new { row.Club, row.Person }).OnDelete(DeleteBehavior.Cascade);
        });
        modelBuilder.Entity<AbsenceRow>(table =>
        {
            table.ToTable("absences").HasKey(row => new { row.Club, row.Id });
            table.Ignore(row => row.Value);
            table.Property(row => row.Club).HasColumnName("club_id");
            table.Property(row => row.Id).HasColumnName("absence_id").ValueGeneratedNever();
            table.Property(row => row.Person).HasColumnName("person_id");
            table.Property(row => row.Kind).HasColumnName("kind");
            table.Property(row => row.First).HasColumnName("first_day");
            table.Property(row => row.Last).HasColumnName("last_day");
            table.Property(row => row.Minutes).HasColumnName("minutes");
            table.Property(row => row.Rpe).HasColumnName("rpe");
            table.Property(row => row.Au).HasColumnName("au");
            table.Property(row => row.Apart).HasColumnName("days_apart");
            table.Property(row => row.Recorded).HasColumnName("recorded_utc");
            table.HasOne<AthleteRow>().WithMany().HasForeignKey(row => new { row.Club, row.Person }).OnDelete(DeleteBehavior.Cascade);
        });
        modelBuilder.Entity<BodyMassRow>(table =>
        {
            table.ToTable("body_masses").HasKey(row => new { row.Club, row.Id });
            table.Ignore(row => row.Value);
            table.Property(row => row.Club).HasColumnName("club_id");
            table.Property(row => row.Id).HasColumnName("weighing_id").ValueGeneratedNever();
            table.Property(row => row.Person).HasColumnName("person_id");
            table.Property(row => row.Day).HasColumnName("day");
            table.Property(row => row.Amount).HasColumnName("amount");
            table.Property(row => row.Unit).HasColumnName("unit");
            table.Property(row => row.PoundsOver).HasColumnName("pounds_over");
            table.Property(row => row.Recorded).HasColumnName("recorded_utc");
            table.HasOne<AthleteRow>().WithMany().HasForeignKey(row => new { row.Club, row.Person }).OnDelete(DeleteBehavior.Cascade);
        });
        modelBuilder.Entity<LiftTestRow>(table =>
        {
            table.ToTable("lift_tests").HasKey(row => new { row.Club, row.Id });
            table.Ignore(row => row.Value);
            table.Property(row => row.Club).HasColumnName("club_id");
            table.Property(row => row.Id).HasColumnName("test_id").ValueGeneratedNever();
            table.Property(row => row.Person).HasColumnName("person_id");
            table.Property(row => row.Exercise).HasColumnName("exercise_id");
            table.Property(row => row.Day).HasColumnName("day");
            table.Property(row => row.Amount).HasColumnName("amount");
            table.Property(row => row.Unit).HasColumnName("unit");
            table.Property(row => row.Repetitions).HasColumnName("repetitions");
            table.Property(row => row.Velocity).HasColumnName("velocity");
            table.Property(row => row.Recorded).HasColumnName("recorded_utc");
            table.HasOne<AthleteRow>().WithMany().HasForeignKey(row => new { row.Club, row.Person }).OnDelete(DeleteBehavior.Cascade);
        });
        modelBuilder.Entity<BoardMarkRow>(table =>
        {
            table.ToTable("board_marks").HasKey(row => new { row.Club, row.Id });
            table.HasIndex(row => new { row.Club, row.Season, row.Session });
            table.Property(row => row.Club).HasColumnName("club_id");
            table.Property(row => row.Id).HasColumnName("mark_id").ValueGeneratedNever();
            table.Property(row => row.Season).HasColumnName("season_stream_id");
            table.Property(row => row.Session).HasColumnName("session_id");
            table.Property(row => row.Person).HasColumnName("person_id");
            table.Property(row => row.Mark).HasColumnName("mark_json");
            table.Property(row => row.Received).HasColumnName("received_utc");
            table.HasOne<AthleteRow>().WithMany().HasForeignKey(row => new { row.Club, row.Person }).OnDelete(DeleteBehavior.Cascade);
            table.HasOne<LogStream>().WithMany().HasForeignKey(row => new { row.Club, row.Season }).OnDelete(DeleteBehavior.Cascade);
        });
        modelBuilder.Entity<RunTestRow>(table =>
        {
            table.ToTable("run_tests").HasKey(row => new { row.Club, row.Id });
            table.Ignore(row => row.Value);
            table.Property(row => row.Club).HasColumnName("club_id");
            table.Property(row => row.Id).HasColumnName("test_id").ValueGeneratedNever();
            table.Property(row => row.Person).HasColumnName("person_id");
            table.Property(row => row.Day).HasColumnName("day");
            table.Property(row => row.Metres).HasColumnName("metres");
            table.Property(row => row.Seconds).HasColumnName("seconds");
            table.Property(row => row.Recorded).HasColumnName("recorded_utc");
            table.HasOne<AthleteRow>().WithMany().HasForeignKey(row => new { row.Club, row.Person }).OnDelete(DeleteBehavior.Cascade);
        });
    }

    private sealed class ClubIdColumn() : ValueConverter<ClubId, Guid>(id => id.Value, value => new ClubId(value));

    private sealed class StreamIdColumn() : ValueConverter<StreamId, Guid>(id => id.Value, value => new StreamId(value));

    private sealed class KindColumn() : ValueConverter<StreamKind, string>(kind => kind.ToString(), text => Kind(text));

    private sealed class InstantColumn() : ValueConverter<DateTimeOffset, long>(instant => instant.UtcTicks, ticks => Instant(ticks));

    private static StreamKind Kind(string text) =>
        Enum.TryParse<StreamKind>(text, out var kind) ? kind : throw new FormatException($"'{text}' is no kind of stream.");

    private static DateTimeOffset Instant(long ticks) => ticks >= 0 && ticks <= DateTimeOffset.MaxValue.Ticks
        ? new DateTimeOffset(ticks, TimeSpan.Zero) : throw new FormatException($"{ticks} is no instant.");
}
