using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Desk.Lists;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Squad;
using Seasonwright.Desk.Streams;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Squads;

namespace Seasonwright.Desk.Tests;

/// <summary>A roster made by hand and from a list, and what is told of its people. The clock stands at Wednesday 20 October 2027, 07:00.</summary>
public sealed class SquadTests
{
    private static readonly DateOnly Today = new(2027, 10, 20);
    private static readonly Reporter Siri = new(ReporterRole.Therapist, true, "Siri Fenwold");
    private static readonly Reporter Coach = new(ReporterRole.Coach, false);
    private static readonly Availability NoJump = Availability.Modified(new([RestrictionTag.NoJump]));

    private static readonly AthleteDraft Ida = new(null, "Norlund", " Ida ", "4", ["right wing"], new(2003, 4, 21), 6, new(62m, BodyMassUnit.Kilogram), Today, null, "Second team", [DayOfWeek.Tuesday]);

    [Fact]
    public async Task A_player_is_added_once_changed_and_leaves()
    {
        await using var desk = await Desk.OpenAsync();
        var team = await TeamAsync(desk);
        var gesture = Guid.NewGuid();
        var (answer, id) = await desk.Workspace.PutAthleteAsync(team, gesture, Ida);
        Assert.IsType<Kept>(answer);
        Assert.Equal(id, (await desk.Workspace.PutAthleteAsync(team, gesture, Ida)).Person);
        await desk.RestartAsync();
        var player = Assert.Single(await desk.Workspace.RosterAsync(team));
        Assert.Equal(("Ida Norlund", 24, 6, "62 kg"), (player.Athlete.Name, player.Athlete.AgeOn(Today), player.Athlete.Training?.YearsOn(Today), $"{Assert.Single(player.Weighings).Mass}"));
        Assert.Equal("Second team", Membership.LeadingOn(player.Memberships, new(2027, 10, 26))?.Squad);
        Assert.Null(Membership.LeadingOn(player.Memberships, new(2027, 10, 27))?.Squad);

        Assert.IsType<Kept>((await desk.Workspace.PutAthleteAsync(team, Guid.NewGuid(), Ida with { Id = id, Number = "14", Second = "" })).Answer);
        player = Assert.Single(await desk.Workspace.RosterAsync(team));
        Assert.Equal(("14", 1, 1), (player.Athlete.Number, player.Memberships.Count, player.Weighings.Count));

        Assert.IsType<Kept>(await desk.Workspace.LeaveSquadAsync(team, id, Today.AddDays(-1)));
        player = Assert.Single(await desk.Workspace.RosterAsync(team));
        Assert.False(player.IsInOrComing(team, Today));
        Assert.IsType<Kept>(await desk.Workspace.EraseAthleteAsync(team, id));
        Assert.Empty(await desk.Workspace.RosterAsync(team));
        Assert.IsType<NotDone>((await desk.Workspace.PutAthleteAsync(team, Guid.NewGuid(), Ida with { Id = id })).Answer);
    }

    [Fact]
    public async Task Everything_that_is_wrong_is_told_by_field_and_nothing_is_kept()
    {
        await using var desk = await Desk.OpenAsync();
        var team = await TeamAsync(desk);
        var wrong = Ida with { Family = " ", Given = "", Number = "123456789", Positions = [new string('x', 41)], Born = Today.AddDays(1), TrainingYears = 41, From = Today, To = Today.AddDays(-1), Second = new string('x', 61) };
        var reasons = Assert.IsType<NotDone>((await desk.Workspace.PutAthleteAsync(team, Guid.NewGuid(), wrong)).Answer).Reasons;
        Assert.Equal("family, number, second, positions, born, training, to", string.Join(", ", reasons.Select(reason => reason.Subject)));
        Assert.Empty(await desk.Workspace.RosterAsync(team));
        Assert.IsType<NotDone>((await desk.Workspace.PutAthleteAsync(new(Guid.NewGuid().ToString()), Guid.NewGuid(), Ida)).Answer);
    }

    [Fact]
    public async Task A_kept_list_becomes_the_roster_once_and_later_lists_add_to_it()
    {
        await using var desk = await Desk.OpenAsync();
        var team = await TeamAsync(desk);
        await desk.Workspace.KeepSquadAsync(team, List("Nr;Name;Pos;geb.;Gewicht (kg)\n1;Varnum, Ysolde;TW/KM;14.3.1999;71,5\n4;Thistlewick, Maren;RL;;"));
        var gesture = Guid.NewGuid();
        Assert.Equal(2, Assert.IsType<Kept>(await desk.Workspace.TakeSquadListAsync(Setup.Empty(team), gesture, Today)).Number);
        Assert.Equal(0, Assert.IsType<Kept>(await desk.Workspace.TakeSquadListAsync(Setup.Empty(team), gesture, Today)).Number);
        var roster = await desk.Workspace.RosterAsync(team);
        Assert.Equal("Ysolde Varnum, Maren Thistlewick", string.Join(", ", roster.Select(player => player.Athlete.Name)));
        Assert.Equal(("TW, KM", "71.5 kg", new DateOnly(1999, 3, 14)), (string.Join(", ", roster[0].Athlete.Positions), $"{roster[0].Weighings[0].Mass}", roster[0].Athlete.Born));

        await desk.Workspace.KeepSquadAsync(team, List("Nr;Name;Pos\n9;VARNUM, Ysolde;TW\n5;Lund, Tuva;left back"));
        Assert.Equal("Lund", Assert.Single((await desk.Workspace.SquadAsync(team)).NotIn(roster)).Family);
        Assert.Equal(1, Assert.IsType<Kept>(await desk.Workspace.TakeSquadListAsync(Setup.Empty(team), Guid.NewGuid(), Today)).Number);
        Assert.Equal("1, 4, 5", string.Join(", ", (await desk.Workspace.RosterAsync(team)).Select(player => player.Athlete.Number)));

        static SquadList List(string text) => SquadReader.Read(SourceText.OfText("squad", text), new SquadOptions(Today));
    }

    [Theory]
    [InlineData("71.5 kg", "71.5 kg")]
    [InlineData("141 lb", "141 lb")]
    [InlineData("10 st 2 lb", "10 st 2 lb")]
    [InlineData("10 st", "10 st")]
    [InlineData("3 kg", null)]
    [InlineData("heavy", null)]
    [InlineData(null, null)]
    public void A_kept_mass_is_taken_as_entered(string? kept, string? taken) => Assert.Equal(taken, TakingSquadList.MassOf(kept)?.ToString());

    [Fact]
    public async Task The_physios_message_binds_at_once_the_coach_tightens_and_only_a_named_clinician_loosens()
    {
        await using var desk = await Desk.OpenAsync();
        var (team, id) = await PlayerAsync(desk);
        var gesture = Guid.NewGuid();
        var (answer, report) = await Report(NoJump, Siri, gesture);
        Assert.IsType<Kept>(answer);
        Assert.Equal((false, new DateTimeOffset(2027, 10, 20, 7, 0, 0, TimeSpan.Zero)), (report!.IsConfirmed, report.Recorded));
        // Sent again it is the same report.
        Assert.Equal(report, (await Report(NoJump, Siri, gesture)).Report);
        Assert.Equal((NoJump, true), await StandingAsync());

        var loosening = Assert.Single(Assert.IsType<NotDone>((await Report(Availability.Full, Coach)).Answer).Reasons);
        Assert.Equal(("only-clinician-loosens", "state"), (loosening.Id, loosening.Subject));
        Assert.Contains("modified: no jump", loosening.Sentence, StringComparison.Ordinal);
        Assert.Equal("clinician-unnamed", Assert.Single(Assert.IsType<NotDone>((await Report(Availability.Full, new(ReporterRole.Doctor, true))).Answer).Reasons).Id);
        Assert.Equal((NoJump, true), await StandingAsync());

        Assert.IsType<Kept>((await Report(Availability.Out, Coach)).Answer);
        Assert.Equal(Availability.Out, (await StandingAsync()).Availability);
        Assert.IsType<Kept>((await Report(Availability.Full, Siri)).Answer);
        Assert.Equal((Availability.Full, true), await StandingAsync());
        var last = Assert.Single(await desk.Workspace.RosterAsync(team)).Reports[^1];
        Assert.IsType<Kept>(await desk.Workspace.ConfirmReportAsync(team, id, last.Id));
        Assert.Equal((Availability.Full, false), await StandingAsync());
        Assert.IsType<NotDone>(await desk.Workspace.ConfirmReportAsync(team, id, Guid.NewGuid()));

        Task<(Answer Answer, AvailabilityReport? Report)> Report(Availability availability, Reporter by, Guid? sent = null) =>
            desk.Workspace.ReportAvailabilityAsync(desk.Tove, team, sent ?? Guid.NewGuid(), id, availability, Today, Today.AddDays(7), by, ReportedHow.Message);
        async Task<(Availability Availability, bool IsUnconfirmed)> StandingAsync()
        {
            var standing = Assert.Single(await desk.Workspace.RosterAsync(team)).StandingOn(Today);
            return (standing.Availability, standing.IsUnconfirmed);
        }
    }

    [Theory]
    [InlineData(400, null, "from")]
    [InlineData(-400, null, "from")]
    [InlineData(0, -1, "review")]
    [InlineData(3, 2, "review")]
    [InlineData(0, 500, "review")]
    public async Task Days_that_cannot_be_are_told(int from, int? review, string field)
    {
        await using var desk = await Desk.OpenAsync();
        var (team, id) = await PlayerAsync(desk);
        var (answer, report) = await desk.Workspace.ReportAvailabilityAsync(desk.Tove, team, Guid.NewGuid(), id, NoJump, Today.AddDays(from), review is { } days ? Today.AddDays(days) : null, Siri, ReportedHow.Phone);
        Assert.Equal(field, Assert.Single(Assert.IsType<NotDone>(answer).Reasons).Subject);
        Assert.Null(report);
        Assert.Empty(Assert.Single(await desk.Workspace.RosterAsync(team)).Reports);
    }

    [Fact]
    public async Task An_absence_is_told_once_and_may_be_taken_back()
    {
        await using var desk = await Desk.OpenAsync();
        var (team, id) = await PlayerAsync(desk);
        var gesture = Guid.NewGuid();
        var days = new DaySpan(Today, Today.AddDays(6));
        for (var time = 0; time < 2; time++) Assert.IsType<Kept>(await desk.Workspace.TellAbsenceAsync(team, gesture, id, AbsenceKind.NationalTeam, days, OutsideLoads.Of(OutsideLoad.Of(new Minutes(90), new Rpe(6m)))));
        var player = Assert.Single(await desk.Workspace.RosterAsync(team));
        Assert.Equal(new Load(540), Absence.OutsideLoadOn(player.Absences, Today));
        Assert.Equal("last", Assert.Single(Assert.IsType<NotDone>(await desk.Workspace.TellAbsenceAsync(team, Guid.NewGuid(), id, AbsenceKind.Work, new(Today, Today.AddDays(400)), OutsideLoads.Unknown)).Reasons).Subject);
        Assert.IsType<NotDone>(await desk.Workspace.TellAbsenceAsync(team, Guid.NewGuid(), new("nobody"), AbsenceKind.Work, days, OutsideLoads.Unknown));
        Assert.IsType<Kept>(await desk.Workspace.TakeBackAbsenceAsync(team, id, gesture));
        Assert.Empty(Assert.Single(await desk.Workspace.RosterAsync(team)).Absences);
    }

    [Theory]
    [InlineData(0, 6, 90, 6, null)]
    [InlineData(-366, 0, 480, 10, null)]
    [InlineData(367, 0, 90, 6, "absence-far first")]
    [InlineData(-367, 0, 90, 6, "absence-far first")]
    [InlineData(0, 366, 90, 6, "absence-long last")]
    [InlineData(0, 0, 481, 1, "absence-load load")]
    [InlineData(400, 0, 500, 10, "absence-far first, absence-load load")]
    public async Task An_absence_lies_within_a_year_and_loads_no_more_than_a_day_holds(int from, int days, int minutes, int rpe, string? told)
    {
        await using var desk = await Desk.OpenAsync();
        var (team, id) = await PlayerAsync(desk);
        var answer = await desk.Workspace.TellAbsenceAsync(team, Guid.NewGuid(), id, AbsenceKind.Work, new(Today.AddDays(from), Today.AddDays(from + days)), OutsideLoads.Of(OutsideLoad.Of(new Minutes(minutes), new Rpe(rpe))));
        Assert.Equal(told, answer is NotDone not ? string.Join(", ", not.Reasons.Select(reason => $"{reason.Id} {reason.Subject}")) : null);
        Assert.Equal(told is null ? 1 : 0, Assert.Single(await desk.Workspace.RosterAsync(team)).Absences.Count);
    }

    [Fact]
    public async Task More_AU_than_a_day_holds_and_days_told_already_are_refused_with_what_is_there()
    {
        await using var desk = await Desk.OpenAsync();
        var (team, id) = await PlayerAsync(desk);
        Assert.Contains("5000 AU a day is more than a day holds: at most 4800 AU, in at most 480 minutes.", Sentence(await Tell(Guid.NewGuid(), 0, 0, 5_000)), StringComparison.Ordinal);
        var first = Guid.NewGuid();
        Assert.IsType<Kept>(await Tell(first, 5, 8, 4_800));
        Assert.IsType<Kept>(await Tell(first, 5, 8, 4_800));
        foreach (var (from, to) in new[] { (8, 12), (0, 5), (6, 7), (0, 20) })
            Assert.Contains("national team, 25 Oct 2027 to 28 Oct 2027", Sentence(await Tell(Guid.NewGuid(), from, to, 1)), StringComparison.Ordinal);
        Assert.IsType<Kept>(await Tell(Guid.NewGuid(), 9, 9, 1));
        Assert.IsType<Kept>(await Tell(Guid.NewGuid(), 4, 4, 1));
        // Another player's days are their own.
        var (_, other) = await desk.Workspace.PutAthleteAsync(team, Guid.NewGuid(), Ida with { Given = "Runa" });
        Assert.IsType<Kept>(await desk.Workspace.TellAbsenceAsync(team, Guid.NewGuid(), other, AbsenceKind.School, new(Today, Today.AddDays(20)), OutsideLoads.Unknown));

        Task<Answer> Tell(Guid gesture, int from, int to, int au) =>
            desk.Workspace.TellAbsenceAsync(team, gesture, id, AbsenceKind.NationalTeam, new(Today.AddDays(from), Today.AddDays(to)), OutsideLoads.Of(OutsideLoad.Of(new Load(au))));
        static string Sentence(Answer answer) => Assert.Single(Assert.IsType<NotDone>(answer).Reasons).Sentence;
    }

    /// <summary>From Monday 25 to Sunday 31 October 2027. Products worked out by hand.</summary>
    [Theory]
    [InlineData("90 x 6", "540 540 540 540 540 540 540")]
    [InlineData("90x6,5", "585 585 585 585 585 585 585")]
    [InlineData("90 min × 6.5", "585 585 585 585 585 585 585")]
    [InlineData("7 x 65", "455 455 455 455 455 455 455")]
    [InlineData("540 AU", "540 540 540 540 540 540 540")]
    [InlineData("0", "0 0 0 0 0 0 0")]
    [InlineData("", "? ? ? ? ? ? ?")]
    [InlineData("Mon 90 x 6; Tue 60 x 4; Thu match 90 x 8", "540 240 ? 720 ? ? ?")]
    [InlineData("Mon: 90 x 6\n thursday 720\n0", "540 0 0 720 0 0 0")]
    [InlineData("26 Oct 60 x 4; Oct 27 100; 2027-10-31 match 60 x 9", "? 240 100 ? ? ? 540")]
    public void Load_elsewhere_is_read_as_people_type_it(string text, string expected)
    {
        DaySpan days = new(new(2027, 10, 25), new(2027, 10, 31));
        var (loads, wrong) = OutsideText.Read(text, days);
        Assert.Null(wrong);
        Assert.Equal(expected, string.Join(' ', days.Days().Select(day => loads.On(day)?.PerDay.Au.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "?")));
    }

    [Fact]
    public void A_name_of_a_day_is_each_such_day_of_a_longer_absence() =>
        Assert.Equal([new DateOnly(2027, 10, 25), new(2027, 11, 1)], OutsideText.Read("Mon 200; 0", new DaySpan(new(2027, 10, 25), new(2027, 11, 3))).Loads.Apart.Select(apart => apart.Day));

    [Theory]
    [InlineData("90,5 x 6", "outside-unread", "‘90,5 x 6’ is not read")]
    [InlineData("90.5x6", "outside-unread", "whole minutes")]
    [InlineData("90 x 11", "outside-unread", "RPE from 0 to 10")]
    [InlineData("90 x 6.3", "outside-unread", "in halves")]
    [InlineData("65 x 70", "outside-unread", "65 x 70")]
    [InlineData("-5", "outside-unread", "-5")]
    [InlineData("2000 x 3", "outside-unread", "2000")]
    [InlineData("a lot", "outside-unread", "a lot")]
    [InlineData("Mon 90 x 6, Tue 60 x 4", "outside-unread", "Mon 90 x 6, Tue 60 x 4")]
    [InlineData("90 x 6; 60 x 4", "outside-unread", "60 x 4")]
    [InlineData("Moonday 90 x 6", "outside-day", "Moonday")]
    [InlineData("1 Nov 90 x 6", "outside-day", "1 Nov")]
    [InlineData("Mon 90 x 6; 25 Oct 60 x 4", "outside-twice", "Mon 25 Oct")]
    public void What_cannot_be_read_of_it_is_told_with_what_is_expected(string text, string id, string says)
    {
        var (loads, wrong) = OutsideText.Read(text, new DaySpan(new(2027, 10, 25), new(2027, 10, 31)));
        Assert.Equal((OutsideLoads.Unknown, id, "load"), (loads, wrong?.Id, wrong?.Subject));
        Assert.Contains(says, wrong!.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_day_told_apart_outlives_a_restart_and_lies_in_the_absence()
    {
        await using var desk = await Desk.OpenAsync();
        var (team, id) = await PlayerAsync(desk);
        DaySpan days = new(Today, Today.AddDays(2));
        OutsideLoads loads = new(OutsideLoad.Of(Load.Zero), [new(Today.AddDays(1), OutsideLoad.Of(new Minutes(90), new Rpe(7.5m)))]);
        Assert.IsType<NotDone>(await desk.Workspace.TellAbsenceAsync(team, Guid.NewGuid(), id, AbsenceKind.NationalTeam, DaySpan.Of(Today), loads));
        Assert.IsType<NotDone>(await desk.Workspace.TellAbsenceAsync(team, Guid.NewGuid(), id, AbsenceKind.NationalTeam, days, loads with { Apart = [new(Today, OutsideLoad.Of(new Load(4_801)))] }));
        Assert.IsType<Kept>(await desk.Workspace.TellAbsenceAsync(team, Guid.NewGuid(), id, AbsenceKind.NationalTeam, days, loads));
        await desk.RestartAsync();
        var told = Assert.Single(Assert.Single(await desk.Workspace.RosterAsync(team)).Absences);
        Assert.Equal((loads, 675), (told.Loads, told.Au));
    }

    [Fact]
    public async Task A_second_player_of_a_name_is_asked_about_once()
    {
        await using var desk = await Desk.OpenAsync();
        var (team, id) = await PlayerAsync(desk);
        var twin = Ida with { Family = "NORLUND", Given = "ida", Second = null };
        var asked = Assert.Single(Assert.IsType<NotDone>((await desk.Workspace.PutAthleteAsync(team, Guid.NewGuid(), twin)).Answer).Reasons);
        Assert.Equal(("athlete-same-name", "another"), (asked.Id, asked.Subject));
        Assert.Single(await desk.Workspace.RosterAsync(team));
        var gesture = Guid.NewGuid();
        for (var time = 0; time < 2; time++) Assert.IsType<Kept>((await desk.Workspace.PutAthleteAsync(team, gesture, twin with { IsAnother = true })).Answer);
        Assert.Equal(2, (await desk.Workspace.RosterAsync(team)).Count);
        // Who keeps the name is not asked again; who takes it is.
        Assert.IsType<Kept>((await desk.Workspace.PutAthleteAsync(team, Guid.NewGuid(), Ida with { Id = id, Number = "5" })).Answer);
        var (_, other) = await desk.Workspace.PutAthleteAsync(team, Guid.NewGuid(), Ida with { Given = "Runa" });
        Assert.IsType<NotDone>((await desk.Workspace.PutAthleteAsync(team, Guid.NewGuid(), Ida with { Id = other })).Answer);
    }

    [Fact]
    public async Task A_player_is_in_groups_of_the_season_from_and_to_a_day_within_it()
    {
        await using var desk = await Desk.OpenAsync();
        var season = await desk.StartAsync();
        var open = await desk.SeasonAsync(season);
        var team = open.Setup.Id;
        var (_, id) = await desk.Workspace.PutAthleteAsync(team, Guid.NewGuid(), Ida);
        Assert.Empty(await desk.Workspace.SeasonsWithGroupsAsync(open));
        await open.Stream.ApplyAsync(desk.Tove, Desk.Gesture(open, new SetGroup(new GroupLine(new("rookies"), "Rookies"))));
        Assert.Equal([season], (await desk.Workspace.SeasonsWithGroupsAsync(open)).Select(one => one.Season.Id));

        var (first, last) = (open.Season.Days!.Value.First, open.Season.Days.Value.Last);
        var place = new GroupPlace(id, season, new("rookies"), first, first.AddDays(40));
        Assert.IsType<Kept>(await Put(place));
        await desk.RestartAsync();
        Assert.Equal([place], Assert.Single(await desk.Workspace.RosterAsync(team)).Groups);

        foreach (var (wrong, told) in new[]
        {
            (place with { Group = new("pivots") }, ("group-gone", "from-pivots")), (place with { From = first.AddDays(-1) }, ("group-day", "from-rookies")),
            (place with { To = last.AddDays(1) }, ("group-day", "to-rookies")), (place with { From = first.AddDays(41) }, ("athlete-leaves-early", "to-rookies")),
        })
        {
            var reason = Assert.Single(Assert.IsType<NotDone>(await Put(wrong)).Reasons);
            Assert.Equal(told, (reason.Id, reason.Subject));
        }
        Assert.IsType<NotDone>(await desk.Workspace.PutInGroupsAsync(team, new("nobody"), season, []));
        Assert.IsType<NotDone>(await desk.Workspace.PutInGroupsAsync(team, id, new(Guid.NewGuid().ToString()), []));
        Assert.Equal([place], Assert.Single(await desk.Workspace.RosterAsync(team)).Groups);
        // A change of the player leaves the groups; none told takes them away.
        await desk.Workspace.PutAthleteAsync(team, Guid.NewGuid(), Ida with { Id = id, Number = "14" });
        Assert.Equal([place], Assert.Single(await desk.Workspace.RosterAsync(team)).Groups);
        Assert.IsType<Kept>(await desk.Workspace.PutInGroupsAsync(team, id, season, []));
        Assert.Empty(Assert.Single(await desk.Workspace.RosterAsync(team)).Groups);

        Task<Answer> Put(GroupPlace one) => desk.Workspace.PutInGroupsAsync(team, id, season, [one]);
    }

    [Fact]
    public async Task People_are_no_part_of_the_season_and_go_with_the_team()
    {
        await using var desk = await Desk.OpenAsync();
        var season = await desk.StartAsync();
        var open = await desk.SeasonAsync(season);
        var before = (open.Stream.State.Number, open.Season.Facts);
        await desk.Workspace.PutAthleteAsync(open.Setup.Id, Guid.NewGuid(), Ida);
        Assert.Equal(before, (open.Stream.State.Number, open.Season.Facts));
        await desk.Workspace.RemoveTeamAsync(desk.Runa, open.Setup.Id);
        Assert.Empty(await desk.Workspace.RosterAsync(open.Setup.Id));
    }

    private static async Task<TeamId> TeamAsync(Desk desk) => (await desk.SeasonAsync(await desk.StartAsync())).Setup.Id;

    private static async Task<(TeamId Team, PersonId Person)> PlayerAsync(Desk desk)
    {
        var team = await TeamAsync(desk);
        return (team, (await desk.Workspace.PutAthleteAsync(team, Guid.NewGuid(), Ida)).Person);
    }
}
