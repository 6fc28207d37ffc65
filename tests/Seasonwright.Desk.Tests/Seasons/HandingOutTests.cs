using System.Text;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Streams;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.Calendars;

namespace Seasonwright.Desk.Tests.Seasons;

/// <summary>What is handed out of an open season: the edition it says it is, and calendar entries that count as newer after every change (RFC 5545, 3.8.7.4).</summary>
public class HandingOutTests
{
    private static readonly DateOnly Today = new(2027, 8, 1);

    [Fact]
    public async Task A_version_is_as_it_was_published_and_what_came_after_is_a_draft()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, new SetMatch(new Match(new("m1"), new(2027, 8, 7), Opponent: "Turnes", Importance: Importance.Key)), new Publish("Agreed")));
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, new MoveMatch(new("m1"), new(2027, 8, 8))));

        var version = (await HandingOut.OfAsync(open, 1, keyMatches: false, Today))!.Season;
        Assert.Equal((1, "Agreed", new DateOnly(2027, 8, 7)), (version.Edition.Version!.Number, version.Edition.Version.Name, version.Season.Match(new("m1"))!.Day));
        Assert.Equal(Importance.Regular, version.Season.Match(new("m1"))!.Importance);
        var draft = (await HandingOut.OfAsync(open, null, keyMatches: true, Today))!.Season;
        Assert.Equal((true, Today, new DateOnly(2027, 8, 8), Importance.Key), (draft.Edition.IsDraft, draft.Edition.Day, draft.Season.Match(new("m1"))!.Day, draft.Season.Match(new("m1"))!.Importance));
        Assert.Null(await HandingOut.OfAsync(open, 2, keyMatches: false, Today));
    }

    [Fact]
    public async Task A_version_is_told_in_the_measures_the_team_had_then()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        await open.TeamStream.ApplyAsync(desk.Runa, new Gesture(Guid.NewGuid(), open.TeamStream.State.Number, [new SetReferenceWeek(new Load(2000))]));
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, new Publish("Agreed")));
        desk.Clock.Advance(TimeSpan.FromMinutes(1));
        await open.TeamStream.ApplyAsync(desk.Runa, new Gesture(Guid.NewGuid(), open.TeamStream.State.Number, [new SetReferenceWeek(new Load(3000))]));

        Assert.Equal(2000, (await HandingOut.OfAsync(open, 1, keyMatches: false, Today))!.Season.Setup.ReferenceWeek.Au);
        Assert.Equal(3000, (await HandingOut.OfAsync(open, null, keyMatches: false, Today))!.Season.Setup.ReferenceWeek.Au);
    }

    /// <summary>A number that fell would leave the old time in everybody's phone.</summary>
    [Fact]
    public async Task The_number_of_a_calendar_entry_never_falls_whatever_becomes_of_its_clock()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        Match Of(TimeOnly? kickOff, string? zone = null) => new(new("m1"), new(2027, 8, 7), KickOff: kickOff, Zone: zone, Opponent: "Turnes");
        var numbers = new List<int>();
        foreach (var state in new[] { Of(new(18, 30)), Of(null), Of(new(18, 0)), Of(new(18, 0), "Europe/Berlin"), Of(null) })
        {
            await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, new SetMatch(state)));
            await open.TeamStream.ApplyAsync(desk.Runa, new Gesture(Guid.NewGuid(), open.TeamStream.State.Number, [new SetLocale(new LocaleSettings(WeekStart: (DayOfWeek)(numbers.Count % 7)))]));
            numbers.Add((await EntryAsync(open)).Sequence);
        }
        Assert.Equal(numbers.Order(), numbers);
        Assert.Distinct(numbers);
    }

    [Fact]
    public async Task The_number_of_a_calendar_entry_rises_with_every_move_and_with_its_undo_and_keeps_its_name()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, new SetMatch(new Match(new("m1"), new(2027, 8, 7), Opponent: "Turnes"))));
        var entries = new List<(string? Uid, int Sequence, int Day)> { await EntryAsync(open) };
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, new MoveMatch(new("m1"), new(2027, 8, 8))));
        entries.Add(await EntryAsync(open));
        await open.Stream.UndoAsync(desk.Runa, Guid.NewGuid());
        entries.Add(await EntryAsync(open));
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, Desk.Load(3, 2000)));
        entries.Add(await EntryAsync(open));

        Assert.Single(entries.Select(entry => entry.Uid).Distinct(StringComparer.Ordinal));
        Assert.Equal([(0, 7), (1, 8), (2, 7), (2, 7)], entries.Select(entry => (entry.Sequence, entry.Day)));
    }

    [Fact]
    public async Task What_was_published_and_is_gone_is_called_off_and_comes_back_newer()
    {
        await using var desk = await Desk.OpenAsync();
        var open = await desk.SeasonAsync(await desk.StartAsync());
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open,
            new SetMatch(new Match(new("m1"), new(2027, 8, 7), Opponent: "Turnes")), new SetMatch(new Match(new("m2"), new(2027, 8, 14), Opponent: "Kalnes")), new Publish("Agreed")));
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, new RemoveMatch(new("m2"))));
        // Made and taken back between two versions: nobody ever held it.
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, new SetMatch(new Match(new("m3"), new(2027, 8, 21), Opponent: "Ostby"))));
        await open.Stream.ApplyAsync(desk.Runa, Desk.Gesture(open, new RemoveMatch(new("m3"))));

        Assert.Equal([("CONFIRMED", 0, 7), ("CANCELLED", 1, 14)], await StatesAsync(open, null));
        Assert.Equal([("CONFIRMED", 0, 7), ("CONFIRMED", 0, 14)], await StatesAsync(open, 1));
        await open.Stream.UndoAsync(desk.Runa, Guid.NewGuid());
        await open.Stream.UndoAsync(desk.Runa, Guid.NewGuid());
        await open.Stream.UndoAsync(desk.Runa, Guid.NewGuid());
        Assert.Equal([("CONFIRMED", 0, 7), ("CONFIRMED", 2, 14)], await StatesAsync(open, null));
    }

    private static async Task<(string? Uid, int Sequence, int Day)> EntryAsync(OpenSeason open)
    {
        var entry = Assert.Single(await EntriesAsync(open, null));
        return (entry.Uid, entry.Sequence, entry.Start!.Day);
    }

    private static async Task<IEnumerable<(string? Status, int Sequence, int Day)>> StatesAsync(OpenSeason open, int? version) =>
        (await EntriesAsync(open, version)).Select(entry => (entry.Status, entry.Sequence, entry.Start!.Day));

    private static async Task<IEnumerable<CalendarEvent>> EntriesAsync(OpenSeason open, int? version)
    {
        var handing = (await HandingOut.OfAsync(open, version, keyMatches: false, Today))!;
        return Calendar.Load(Encoding.UTF8.GetString(HandOuts.Calendar(handing.Season, new CalendarChoices(), await handing.RevisionsAsync()).Bytes))!.Events;
    }
}
