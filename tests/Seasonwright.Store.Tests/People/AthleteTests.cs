using System.Text;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;
using Seasonwright.Store.Log;
using Seasonwright.Store.People;

namespace Seasonwright.Store.Tests;

/// <summary>Athletes and what is told of them, as rows that live and go with the person and the team.</summary>
public sealed class AthleteTests : IDisposable
{
    private static readonly StreamId Second = new(new Guid("0198f300-0000-7000-8000-00000000000c"));
    private static readonly DateOnly Monday = new(2027, 10, 18);
    private static readonly DateTimeOffset Seven = new(2027, 10, 18, 7, 3, 0, TimeSpan.Zero);

    private static readonly Athlete Ysolde = new(new("ysolde"), "Varnum", "Ysolde", "1", ["TW", "left back"], new(1999, 3, 14), new TrainingAge(6, new(2027, 7, 1)));
    private static readonly Athlete Maren = new(new("maren"), "Thistlewick", "Maren", null, [], null, null);

    private static readonly AvailabilityReport NoJump = new(new Guid("0198f300-0000-7000-8000-0000000000a1"), Ysolde.Id, Availability.Modified(new([RestrictionTag.NoJump, RestrictionTag.NoSprint], new Minutes(40))), Monday, Monday.AddDays(3),
        new(ReporterRole.Therapist, true, "Pell"), ReportedHow.Message, new("coach"), Seven, false);

    private static readonly Absence Camp = new(new Guid("0198f300-0000-7000-8000-0000000000a2"), Ysolde.Id, AbsenceKind.NationalTeam, new(Monday, Monday.AddDays(6)),
        new(OutsideLoad.Of(new Minutes(90), new Rpe(6.5m)), [new(Monday, OutsideLoad.Of(new Minutes(60), new Rpe(3.5m))), new(Monday.AddDays(3), OutsideLoad.Of(new Load(720)))]), Seven);
    private static readonly Absence School = Camp with { Id = new Guid("0198f300-0000-7000-8000-0000000000a3"), Kind = AbsenceKind.School, Days = DaySpan.Of(Monday.AddDays(20)), Loads = OutsideLoads.Of(OutsideLoad.Of(new Load(120))) };
    private static readonly Absence Away = Camp with { Id = new Guid("0198f300-0000-7000-8000-0000000000a4"), Kind = AbsenceKind.Other, Days = DaySpan.Of(Monday.AddDays(30)), Loads = OutsideLoads.Unknown };
    private static readonly WeighIn Weighed = new(new Guid("0198f300-0000-7000-8000-0000000000a5"), Ysolde.Id, Monday, new(10, BodyMassUnit.Stone, 2.5m), Seven);

    private static readonly LiftTest Squat = new(new Guid("0198f300-0000-7000-8000-0000000000a6"), Ysolde.Id, new("back-squat"), Monday, new(225, MassUnit.Pound), 5, null, Seven);
    private static readonly LiftTest Fast = Squat with { Id = new Guid("0198f300-0000-7000-8000-0000000000a7"), Weight = new(60.5m), Repetitions = null, Velocity = 0.83m };

    private static readonly RunTest Trial = new(new Guid("0198f300-0000-7000-8000-0000000000a8"), Ysolde.Id, Monday, 1_500, 372, Seven), Earlier = Trial with { Id = new Guid("0198f300-0000-7000-8000-0000000000a9"), Day = Monday.AddDays(-60), Metres = 1_410, Seconds = 360 };

    private static readonly GroupPlace Rookie = new(Ysolde.Id, new(Sample.Season.ToString()), new("rookies"), Monday, Monday.AddDays(60)), Back = Rookie with { Group = new("backs"), From = Monday.AddDays(7), To = null };

    private readonly TemporaryFolder place = new();

    public void Dispose() => place.Dispose();

    [Fact]
    public async Task Everything_told_of_a_person_survives_a_restart_in_its_order()
    {
        using (var folder = await place.OpenAsync()) await FillAsync(folder);
        using var again = await place.OpenAsync();
        var all = await again.Athletes.OfAsync(Sample.Team);
        Assert.Equal([Ysolde, Maren], all.Select(one => one.Athlete));
        Assert.Equal([Of(Ysolde, Sample.Team), Of(Ysolde, Second) with { Squad = "Second team" }], all[0].Memberships.OrderBy(one => one.Squad, StringComparer.Ordinal));
        Assert.Equal([NoJump], all[0].Reports);
        Assert.Equal([Camp, School, Away], all[0].Absences);
        Assert.Equal([Weighed], all[0].Weighings);
        Assert.Equal([Squat, Fast], all[0].Lifts);
        Assert.Equal([Earlier, Trial], all[0].Runs);
        Assert.Equal([Rookie, Back], all[0].Groups);
        Assert.Empty(all[1].Groups);
        Assert.Equal([Of(Maren, Sample.Team)], all[1].Memberships);
        Assert.Equal([Ysolde], (await again.Athletes.OfAsync(Second)).Select(one => one.Athlete));
    }

    [Fact]
    public async Task What_is_sent_again_is_kept_once_and_a_confirmation_changes_nothing_else()
    {
        using var folder = await place.OpenAsync();
        await FillAsync(folder);
        Assert.True(await folder.Athletes.AppendAsync(NoJump with { Availability = Availability.Out }));
        Assert.True(await folder.Athletes.AppendAsync(Camp with { Loads = OutsideLoads.Unknown }));
        Assert.True(await folder.Athletes.AppendAsync(Weighed with { Day = Monday.AddDays(1) }));
        Assert.True(await folder.Athletes.ConfirmAsync(Ysolde.Id, NoJump.Id));
        Assert.False(await folder.Athletes.ConfirmAsync(Maren.Id, NoJump.Id));
        Assert.True(await folder.Athletes.AppendAsync(Squat with { Weight = new(1) }));
        await folder.Athletes.EraseLiftAsync(Maren.Id, Squat.Id);
        await folder.Athletes.EraseLiftAsync(Ysolde.Id, Fast.Id);
        Assert.True(await folder.Athletes.AppendAsync(Trial with { Metres = 3_000 }));
        await folder.Athletes.EraseRunAsync(Maren.Id, Trial.Id);
        await folder.Athletes.EraseRunAsync(Ysolde.Id, Earlier.Id);
        await folder.Athletes.EraseAbsenceAsync(Maren.Id, School.Id);
        await folder.Athletes.EraseAbsenceAsync(Ysolde.Id, Away.Id);
        var file = (await folder.Athletes.OfAsync(Sample.Team))[0];
        Assert.Equal([NoJump with { IsConfirmed = true }], file.Reports);
        Assert.Equal([Camp, School], file.Absences);
        Assert.Equal([Weighed], file.Weighings);
        Assert.Equal([Squat], file.Lifts);
        Assert.Equal([Trial], file.Runs);
    }

    [Fact]
    public async Task A_person_is_changed_in_place_and_keeps_the_place()
    {
        using var folder = await place.OpenAsync();
        await FillAsync(folder);
        var changed = Ysolde with { Number = "12", Training = null };
        Assert.True(await folder.Athletes.PutAsync(Sample.Team, [(changed, [Of(Ysolde, Sample.Team) with { To = new DateOnly(2028, 5, 31) }])]));
        var all = await folder.Athletes.OfAsync(Sample.Team);
        Assert.Equal([changed, Maren], all.Select(one => one.Athlete));
        Assert.Equal([null, new DateOnly(2028, 5, 31)], all[0].Memberships.OrderBy(one => one.To).Select(one => one.To));
        Assert.Equal([NoJump], all[0].Reports);
    }

    [Fact]
    public async Task Groups_take_the_place_of_those_told_before_and_go_with_their_season()
    {
        using var folder = await place.OpenAsync();
        await FillAsync(folder);
        var longer = Back with { To = Monday.AddDays(90) };
        Assert.True(await folder.Athletes.PutGroupsAsync(Ysolde.Id, Sample.Season, [longer]));
        Assert.Equal([longer], (await folder.Athletes.OfAsync(Sample.Team))[0].Groups);
        // A season is where groups are; a team is none, and nobody is put into what is not there.
        Assert.False(await folder.Athletes.PutGroupsAsync(Ysolde.Id, Sample.Team, []));
        Assert.False(await folder.Athletes.PutGroupsAsync(new("nobody"), Sample.Season, []));
        Assert.Equal([longer], (await folder.Athletes.OfAsync(Sample.Team))[0].Groups);
        await Assert.ThrowsAsync<ArgumentException>(() => folder.Athletes.PutGroupsAsync(Maren.Id, Sample.Season, [Rookie]));
        await Assert.ThrowsAsync<ArgumentException>(() => folder.Athletes.PutGroupsAsync(Ysolde.Id, Second, [Rookie]));
        await folder.Log.RemoveAsync(Sample.Season, Sample.Coach);
        Assert.Equal([Ysolde, Maren], (await folder.Athletes.OfAsync(Sample.Team)).Select(one => one.Athlete));
        Assert.Equal("0", Sql.Ask(place.Database, "SELECT COUNT(*) FROM group_places")?.ToString());
    }

    [Fact]
    public async Task Only_a_team_that_is_there_has_people_and_only_people_who_are_there_are_told_of()
    {
        using var folder = await place.OpenAsync();
        Assert.False(await folder.Athletes.PutAsync(Sample.Team, [(Ysolde, [Of(Ysolde, Sample.Team)])]));
        await folder.Log.AppendAsync(Sample.Birth());
        Assert.False(await folder.Athletes.PutAsync(Sample.Season, [(Ysolde, [Of(Ysolde, Sample.Season)])]));
        Assert.False(await folder.Athletes.AppendAsync(NoJump));
        Assert.False(await folder.Athletes.AppendAsync(Camp));
        Assert.False(await folder.Athletes.AppendAsync(Weighed));
        Assert.False(await folder.Athletes.AppendAsync(Squat));
        Assert.False(await folder.Athletes.AppendAsync(Trial));
        Assert.Empty(await folder.Athletes.OfAsync(Sample.Team));
        await Assert.ThrowsAsync<ArgumentException>(() => folder.Athletes.PutAsync(Sample.Team, [(Ysolde, [])]));
        await Assert.ThrowsAsync<ArgumentException>(() => folder.Athletes.PutAsync(Sample.Team, [(Ysolde, [Of(Maren, Sample.Team)])]));
        await Assert.ThrowsAsync<ArgumentException>(() => folder.Athletes.PutAsync(Sample.Team, [(Ysolde, [Of(Ysolde, Second)])]));
    }

    [Fact]
    public async Task An_erased_person_is_gone_also_from_the_file_with_everything_told()
    {
        using (var folder = await place.OpenAsync())
        {
            await FillAsync(folder);
            await folder.Athletes.EraseAsync(Ysolde.Id);
            Assert.Equal([Maren], (await folder.Athletes.OfAsync(Sample.Team)).Select(one => one.Athlete));
        }
        AssertEmptyOf("ysolde");
        var bytes = Encoding.UTF8.GetString(await File.ReadAllBytesAsync(place.Database));
        Assert.DoesNotContain("Varnum", bytes, StringComparison.Ordinal);
        Assert.DoesNotContain("Pell", bytes, StringComparison.Ordinal);
        Assert.Contains("Thistlewick", bytes, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_removed_team_takes_those_who_are_in_no_other_and_leaves_who_is()
    {
        using (var folder = await place.OpenAsync())
        {
            await FillAsync(folder);
            await folder.Log.RemoveAsync(Sample.Team, Sample.Coach);
            Assert.Empty(await folder.Athletes.OfAsync(Sample.Team));
            var stays = Assert.Single(await folder.Athletes.OfAsync(Second));
            Assert.Equal([NoJump], stays.Reports);
            Assert.Equal(Second.ToString(), Assert.Single(stays.Memberships).Team.Text);
            await folder.Log.RemoveAsync(Second, Sample.Coach);
        }
        AssertEmptyOf("ysolde");
        AssertEmptyOf("maren");
        var bytes = Encoding.UTF8.GetString(await File.ReadAllBytesAsync(place.Database));
        Assert.DoesNotContain("Varnum", bytes, StringComparison.Ordinal);
        Assert.DoesNotContain("Thistlewick", bytes, StringComparison.Ordinal);
    }

    [Fact]
    public async Task People_are_in_no_entry_of_the_log_and_come_back_from_a_backup()
    {
        using (var folder = await place.OpenAsync())
        {
            await FillAsync(folder);
            Assert.DoesNotContain("Varnum", await Sample.Said(folder), StringComparison.Ordinal);
            Assert.DoesNotContain("NoJump", await Sample.Said(folder), StringComparison.Ordinal);
            Backup.Write(place.Data, place.In("copy.db"));
        }
        Restore.From(place.In("copy.db"), place.In("second"), TimeProvider.System);
        using var restored = await DataFolder.OpenAsync(place.In("second"), TimeProvider.System);
        var all = await restored.Athletes.OfAsync(Sample.Team);
        Assert.Equal([Ysolde, Maren], all.Select(one => one.Athlete));
        Assert.Equal([NoJump], all[0].Reports);
        Assert.Equal([Camp, School, Away], all[0].Absences);
        Assert.Equal([Weighed], all[0].Weighings);
        Assert.Equal([Rookie, Back], all[0].Groups);
    }

    /// <summary>A value we never wrote is damage to be told, not a report taken for something it is not.</summary>
    [Theory]
    [InlineData("UPDATE availability_reports SET state = 'Maybe'")]
    [InlineData("UPDATE availability_reports SET tags = 'NoJump NoFun'")]
    [InlineData("UPDATE availability_reports SET most_minutes = -3")]
    [InlineData("UPDATE lift_tests SET amount = -60")]
    [InlineData("UPDATE lift_tests SET unit = 'Stone'")]
    [InlineData("UPDATE lift_tests SET exercise_id = ''")]
    [InlineData("UPDATE availability_reports SET tags = 'UpperBodyOnly LowerBodyOnly'")]
    [InlineData("UPDATE memberships SET to_day = '2001-01-01'")]
    [InlineData("UPDATE group_places SET to_day = '2001-01-01'")]
    [InlineData("UPDATE absences SET au = 12, minutes = 12")]
    [InlineData("UPDATE absences SET days_apart = '2027-10-18'")]
    [InlineData("UPDATE absences SET days_apart = '2027-10-18 90x11'")]
    [InlineData("UPDATE absences SET days_apart = '2027-10-18 90x6x3'")]
    [InlineData("UPDATE absences SET days_apart = '2027-10-18 99999999999'")]
    [InlineData("UPDATE absences SET last_day = '2001-01-01'")]
    [InlineData("UPDATE body_masses SET unit = 'Feather'")]
    [InlineData("UPDATE athletes SET training_years = -1 WHERE training_years IS NOT NULL")]
    public async Task What_cannot_be_is_told_as_damage(string sql)
    {
        using (var folder = await place.OpenAsync()) await FillAsync(folder);
        Sql.Run(place.Database, sql);
        using var again = await place.OpenAsync();
        Assert.Equal(StoreTroubleKind.Damaged, (await Assert.ThrowsAsync<StoreTrouble>(() => again.Athletes.OfAsync(Sample.Team))).Kind);
    }

    private static async Task FillAsync(DataFolder folder)
    {
        await folder.Log.AppendAsync(Sample.Birth());
        await folder.Log.AppendAsync(Sample.Request(Sample.To(Second, 0, "second born") with { Creates = new NewStream(StreamKind.Team, "Second team") }));
        Assert.True(await folder.Athletes.PutAsync(Sample.Team, [(Ysolde, [Of(Ysolde, Sample.Team)]), (Maren, [Of(Maren, Sample.Team)])]));
        Assert.True(await folder.Athletes.PutAsync(Second, [(Ysolde, [Of(Ysolde, Second) with { Squad = "Second team" }])]));
        Assert.True(await folder.Athletes.AppendAsync(NoJump));
        foreach (var absence in new[] { Away, Camp, School }) Assert.True(await folder.Athletes.AppendAsync(absence));
        Assert.True(await folder.Athletes.AppendAsync(Weighed));
        Assert.True(await folder.Athletes.AppendAsync(Fast));
        Assert.True(await folder.Athletes.AppendAsync(Squat));
        foreach (var test in new[] { Trial, Earlier }) Assert.True(await folder.Athletes.AppendAsync(test));
        Assert.True(await folder.Athletes.PutGroupsAsync(Ysolde.Id, Sample.Season, [Back, Rookie]));
        Assert.True(await folder.Boards.AppendAsync(Sample.Season, new("gym"), [(Guid.CreateVersion7(), Ysolde.Id, "{}")]));
    }

    private static Membership Of(Athlete athlete, StreamId team) => new(athlete.Id, new(team.ToString()), new(2027, 7, 5), null, new([DayOfWeek.Tuesday], [new(Monday, Monday.AddDays(1))]));

    private void AssertEmptyOf(string person)
    {
        foreach (var table in new[] { "athletes", "memberships", "availability_reports", "absences", "body_masses", "lift_tests", "run_tests", "group_places", "board_marks" })
            Assert.Equal("0", Sql.Ask(place.Database, $"SELECT COUNT(*) FROM {table} WHERE person_id = '{person}'")?.ToString());
    }
}
