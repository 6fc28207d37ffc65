using Seasonwright.Core.Boards;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk.Boards;
using Seasonwright.Desk.Demo;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Squad;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Desk.Tests;

/// <summary>What is tapped at the board of the demo's session of 28 October: the log never hears of it.</summary>
public sealed class LeadingSessionsTests
{
    private static readonly DateOnly Today = new(2027, 10, 20);

    [Fact]
    public async Task What_is_tapped_is_kept_once_and_survives_a_restart()
    {
        await using var desk = await Desk.OpenAsync();
        var (open, session) = await DemoAsync(desk);
        var led = (await desk.Workspace.BoardAsync(open, session))!;
        var (who, entries, stamp) = (led.Sheet.Athletes.First(one => one.Work.IsLifting).Athlete.Id, open.Stream.State.Number, await desk.Workspace.BoardStampAsync(open, session));
        for (var time = 0; time < 2; time++) Assert.Equal(new KeptMarks(true, null), await desk.Workspace.KeepMarksAsync(open, session, $"[{Came(1, who, "late")},{Came(2, who, "here")}]"));
        await desk.RestartAsync();
        open = await desk.SeasonAsync(open.Season.Id);
        Assert.Equal(Attendance.Here, (await desk.Workspace.BoardAsync(open, session))!.State.Of(who));
        Assert.False(string.Equals(stamp, await desk.Workspace.BoardStampAsync(open, session), StringComparison.Ordinal));
        Assert.Equal(entries, open.Stream.State.Number);
    }

    [Fact]
    public async Task What_cannot_be_is_let_go_and_told_and_the_rest_is_kept()
    {
        await using var desk = await Desk.OpenAsync();
        var (open, session) = await DemoAsync(desk);
        var who = (await desk.Workspace.BoardAsync(open, session))!.Sheet.Athletes[0].Athlete.Id;
        var kept = await desk.Workspace.KeepMarksAsync(open, session, $$"""[{{Came(1, who, "late")}},{"mark":"set","id":"00000002-0000-0000-0000-000000000000","at":"2027-10-28T09:31:00Z","person":"{{who.Text}}","item":"a1","set":99,"how":"asWritten","exercise":"back-squat"}]""");
        Assert.True(kept.AreKept);
        Assert.Contains("99", kept.Trouble, StringComparison.Ordinal);
        Assert.Equal(Attendance.Late, (await desk.Workspace.BoardAsync(open, session))!.State.Of(who));
        // One that a newer version sends does not keep the others from being kept.
        var newer = await desk.Workspace.KeepMarksAsync(open, session, $$"""[{"mark":"dance"},{{Came(3, who, "away")}}]""");
        Assert.True(newer.AreKept);
        Assert.Contains("let go", newer.Trouble, StringComparison.Ordinal);
        Assert.Equal(Attendance.Away, (await desk.Workspace.BoardAsync(open, session))!.State.Of(who));
        Assert.False((await desk.Workspace.KeepMarksAsync(open, session, "dance")).AreKept);
    }

    [Fact]
    public async Task A_person_who_is_erased_takes_what_was_tapped_along_and_late_taps_about_them_are_let_go()
    {
        await using var desk = await Desk.OpenAsync();
        var (open, session) = await DemoAsync(desk);
        var people = (await desk.Workspace.BoardAsync(open, session))!.Sheet.Athletes;
        await desk.Workspace.KeepMarksAsync(open, session, $"[{Came(1, people[0].Athlete.Id, "late")}]");
        var stamp = await desk.Workspace.BoardStampAsync(open, session);
        await desk.Workspace.EraseAthleteAsync(open.Setup.Id, people[0].Athlete.Id);
        Assert.False(string.Equals(stamp, await desk.Workspace.BoardStampAsync(open, session), StringComparison.Ordinal));
        Assert.True((await desk.Workspace.KeepMarksAsync(open, session, $"[{Came(2, people[0].Athlete.Id, "here")},{Came(3, people[1].Athlete.Id, "late")}]")).AreKept);
        var led = (await desk.Workspace.BoardAsync(open, session))!;
        Assert.Equal(people[1].Athlete.Id, Assert.Single(led.State.Came).Key);
        Assert.Equal(people.Count - 1, led.Sheet.Athletes.Count);
    }

    [Fact]
    public async Task A_session_without_a_workout_has_no_board_and_its_marks_stay_for_when_it_has()
    {
        await using var desk = await Desk.OpenAsync();
        var (open, id) = await DemoAsync(desk);
        var (session, who) = (open.Season.Session(id)!, (await desk.Workspace.BoardAsync(open, id))!.Sheet.Athletes[0].Athlete.Id);
        await desk.Workspace.KeepMarksAsync(open, id, $"[{Came(1, who, "late")}]");
        Assert.IsType<Kept>(await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, new SetSession(session with { Workout = null }))));
        Assert.Null(await desk.Workspace.BoardAsync(open, id));
        Assert.Null(await desk.Workspace.BoardAsync(open, new("none")));
        Assert.IsType<Kept>(await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, new SetSession(session))));
        Assert.Equal(Attendance.Late, (await desk.Workspace.BoardAsync(open, id))!.State.Of(who));
    }

    private static string Came(int id, PersonId who, string how) => $$"""{"mark":"came","id":"0000000{{id}}-0000-0000-0000-000000000000","at":"2027-10-28T09:3{{id}}:00Z","person":"{{who.Text}}","how":"{{how}}"}""";

    private static async Task<(OpenSeason Open, SessionId Session)> DemoAsync(Desk desk)
    {
        var (_, id) = await desk.Workspace.AddDemoAsync(desk.Runa, Today);
        var open = await desk.SeasonAsync(id!.Value);
        return (open, open.Season.Sessions.First(session => session.Workout is not null && session.Day >= Today).Id);
    }
}
