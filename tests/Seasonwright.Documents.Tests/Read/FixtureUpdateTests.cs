using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Fixtures;

namespace Seasonwright.Documents.Tests.Read;

/// <summary>A list read again: what the season knows is found, moved, marked, and never doubled or deleted.</summary>
public class FixtureUpdateTests
{
    private const string First = "samples/fixtures-01-league-ids.csv", Second = "samples/fixtures-08-update-of-01.csv";

    [Fact]
    public void The_later_state_of_a_list_gives_the_changes_expected()
    {
        var season = Taken(Started(), FixtureCases.Read(First, "Harbour Vale"), Answers.None);
        var update = FixtureUpdate.Compare(season.AllMatches, FixtureCases.Read(Second, "Harbour Vale"));
        var expected = FixtureCases.Expected(Second).GetProperty("changes").EnumerateArray().Select(change => (change.GetProperty("match").GetString()!, change.GetProperty("change").GetString()!)).ToList();
        // The row without a number is added only once its question is answered.
        Assert.Equal(expected.Select(change => change.Item1.Length == 0 ? ("", "asked") : change).Order(), update.Changes.Select(change => (change.Row?.SourceId ?? change.Known?.Source?.Id ?? "", Words(change.Kind))).Order());
        Assert.Equal("Q-lost-result Q-no-id", string.Join(' ', update.Questions.Select(question => question.Id).Order(StringComparer.Ordinal)));
        var moved = update.Changes.Single(change => change.Kind == ChangeKind.Moved);
        Assert.Equal((new DateOnly(2026, 12, 2), new TimeOnly(19, 15), "28-21"), (moved.Match!.Day, moved.Match.KickOff, moved.Match.Result));
    }

    [Theory]
    [MemberData(nameof(FixtureSampleTests.Samples), MemberType = typeof(FixtureSampleTests))]
    public void A_second_reading_of_the_same_list_changes_nothing(string path, string? team)
    {
        var answers = Answers.None.With("Q-order", "day-first");
        var list = FixtureCases.Read(path, team, answers);
        var season = Taken(Started(), list, answers);
        Assert.NotEmpty(season.AllMatches);
        var again = FixtureUpdate.Compare(season.AllMatches, list, answers);
        Assert.All(again.Changes, change => Assert.Equal(ChangeKind.Unchanged, change.Kind));
        Assert.Null(FixtureImport.Edit(list, again, Id));
    }

    [Fact]
    public void A_list_from_a_file_with_a_very_long_name_is_taken_in()
    {
        const string rows = "Date,Home,Away\n2026-10-07,Harbour Vale,Brovik\n";
        var list = FixtureReader.Read(SourceText.OfText(new string('n', 300) + ".csv", rows), new FixtureOptions("Harbour Vale"));
        Assert.Single(Taken(Started(), list, Answers.None).AllMatches);
    }

    [Fact]
    public void Also_after_an_update_and_after_its_questions()
    {
        var season = Taken(Started(), FixtureCases.Read(First, "Harbour Vale"), Answers.None);
        var answers = Answers.None.With("Q-no-id", "new").With("Q-lost-result", "keep");
        var list = FixtureCases.Read(Second, "Harbour Vale");
        season = Taken(season, list, answers);
        // 10 of the first list, one vanished among them and kept, two added.
        Assert.Equal(12, season.AllMatches.Length);
        Assert.Equal("2623", Assert.Single(season.AllMatches, match => match.Source!.Vanished).Source!.Id);
        Assert.All(FixtureUpdate.Compare(season.AllMatches, list, Answers.None).Changes, change => Assert.Equal(ChangeKind.Unchanged, change.Kind));
    }

    [Theory]
    [InlineData("Competition,Date,Home,Away\nCup,2026-10-07,Harbour Vale,Brovik\n")]
    [InlineData("Date,Home,Away\n2026-10-07,Harbour Vale,Brovik\n")]
    public void A_cup_list_taken_in_beside_the_league_list_loses_no_league_match(string cup)
    {
        var season = Taken(Started(), Read("Competition,Date,Home,Away\nLeague,2026-09-05,Harbour Vale,Kalnes\nLeague,2026-09-12,Brovik,Harbour Vale\n"), Answers.None);
        season = Taken(season, Read(cup), Answers.None);
        Assert.Equal(3, season.AllMatches.Length);
        Assert.DoesNotContain(season.AllMatches, match => match.Source!.Vanished);
        // And the league's own next state still does.
        season = Taken(season, Read("Competition,Date,Home,Away\nLeague,2026-09-05,Harbour Vale,Kalnes\n"), Answers.None);
        Assert.Equal(new DateOnly(2026, 9, 12), Assert.Single(season.AllMatches, match => match.Source!.Vanished).Day);
    }

    [Fact]
    public void A_list_without_numbers_finds_its_matches_by_round_then_by_pair()
    {
        const string Old = "Round,Date,Home,Away\n1,2026-09-05,Harbour Vale,Kalnes\n2,2026-09-12,Brovik,Harbour Vale\n3,2026-09-19,Harbour Vale,Skarholm\n";
        const string New = "Round,Date,Home,Away\n1,2026-09-06,Harbour Vale,Kalnes\n5,2026-10-12,Brovik,Harbour Vale\n3,2026-09-19,Harbour Vale,Skarholm\n";
        var season = Taken(Started(), Read(Old), Answers.None);
        var changes = FixtureUpdate.Compare(season.AllMatches, Read(New)).Changes;
        Assert.Equal([ChangeKind.Moved, ChangeKind.Moved, ChangeKind.Unchanged], changes.Select(change => change.Kind));
    }

    [Fact]
    public void What_might_be_a_known_match_is_asked_and_nothing_is_doubled_meanwhile()
    {
        var season = Taken(Started(), Read("Date,Home,Away\n2026-09-05,Harbour Vale,Kalnes\n2026-10-12,Brovik,Harbour Vale\n"), Answers.None);
        var swapped = Read("Date,Home,Away\n2026-09-12,Kalnes,Harbour Vale\n2026-10-12,Brovik,Harbour Vale\n");
        var asked = FixtureUpdate.Compare(season.AllMatches, swapped);
        Assert.Equal([ChangeKind.Asked, ChangeKind.Unchanged], asked.Changes.Select(change => change.Kind));
        Assert.Equal("Q-identity", Assert.Single(asked.Questions).Id);
        var same = FixtureUpdate.Compare(season.AllMatches, swapped, Answers.None.With("Q-identity", "same"));
        Assert.Equal((ChangeKind.Moved, Venue.Away), (same.Changes[0].Kind, same.Changes[0].Match!.Venue));
        var added = FixtureUpdate.Compare(season.AllMatches, swapped, Answers.None.With("Q-identity", "new"));
        Assert.Equal([ChangeKind.Added, ChangeKind.Unchanged, ChangeKind.Vanished], added.Changes.Select(change => change.Kind));
    }

    [Fact]
    public void What_the_coach_entered_is_neither_marked_nor_overwritten_by_silence()
    {
        var season = Taken(Started(), Read("Id,Date,Home,Away\n7,2026-09-05,Harbour Vale,Kalnes\n"), Answers.None);
        var match = season.AllMatches[0] with { KickOff = new TimeOnly(18, 0), Importance = Importance.Key, Note = "derby", Place = "Vale Hall", Result = "30-28" };
        var own = new Match(new MatchId("own"), new DateOnly(2026, 8, 20), Opponent: "Brovik");
        var changes = FixtureUpdate.Compare([match, own], Read("Id,Date,Home,Away\n7,2026-09-05,Harbour Vale,Kalnes\n")).Changes;
        Assert.Equal(ChangeKind.Unchanged, Assert.Single(changes).Kind);
        Assert.Equal(match, changes[0].Match);
    }

    private const string Listed = "Id,Date,Time,Home,Away,Place\n7,2026-09-05,18:00,Harbour Vale,Kalnes,Vale Hall\n8,2026-09-12,18:00,Brovik,Harbour Vale,Brovik Hall\n";

    public static TheoryData<string, string> ByHand { get; } = new()
    {
        { "moved", "2026-09-06 16:00 Confirmed Home Kalnes Vale Hall" },
        { "put", "2026-09-05 18:00 Confirmed Home Kalnes Old Hall" },
        { "postponed", "- - Postponed Home Kalnes Vale Hall" },
        { "renamed", "2026-09-05 18:00 Confirmed Neutral Kalnes HK Vale Hall" },
    };

    [Theory]
    [MemberData(nameof(ByHand))]
    public void What_the_coach_has_changed_stays_while_the_list_says_the_same_as_last_time(string how, string stands)
    {
        foreach (var text in new[] { Listed, Listed.Replace("Id,", "", StringComparison.Ordinal).Replace("7,", "", StringComparison.Ordinal).Replace("8,", "", StringComparison.Ordinal) })
        {
            var season = Applied(Taken(Started(), Read(text), Answers.None), Hand(Taken(Started(), Read(text), Answers.None), how));
            var again = FixtureUpdate.Compare(season.AllMatches, Read(text));
            Assert.All(again.Changes, change => Assert.Equal((ChangeKind.Unchanged, 0), (change.Kind, change.Fields.Count)));
            Assert.Equal(2, again.Changes.Count);
            Assert.Null(FixtureImport.Edit(Read(text), again, Id));
            Assert.Equal(stands, Told(again.Changes[0].Match!));
        }
    }

    [Fact]
    public void What_the_list_says_anew_changes_what_the_coach_left_and_keeps_the_rest()
    {
        var season = Taken(Started(), Read(Listed), Answers.None);
        season = Applied(season, Hand(season, "put"));
        var list = Read(Listed.Replace("2026-09-05,18:00", "2026-09-06,15:30", StringComparison.Ordinal));
        season = Taken(season, list, Answers.None);
        Assert.Equal("2026-09-06 15:30 Confirmed Home Kalnes Old Hall", Told(Seven(season)));
        Assert.All(FixtureUpdate.Compare(season.AllMatches, list).Changes, change => Assert.False(change.IsWritten));
    }

    [Theory]
    [InlineData("ours", "2026-09-06 16:00 Confirmed Home Kalnes Vale Hall")]
    [InlineData("list", "2026-09-04 20:00 Confirmed Home Kalnes Vale Hall")]
    public void What_both_have_changed_is_asked_once_and_then_settled(string answer, string stands)
    {
        var season = Taken(Started(), Read(Listed), Answers.None);
        season = Applied(season, Hand(season, "moved"));
        var list = Read(Listed.Replace("2026-09-05,18:00", "2026-09-04,20:00", StringComparison.Ordinal));
        var asked = FixtureUpdate.Compare(season.AllMatches, list);
        Assert.Equal([ChangeKind.Asked, ChangeKind.Unchanged], asked.Changes.Select(change => change.Kind));
        var question = Assert.Single(asked.Questions);
        Assert.Equal(("Q-both-changed", null), (question.Kind, question.Offered));
        Assert.Equal("yours: Sun 6 Sep 2026, 16:00; the list's: Fri 4 Sep 2026, 20:00", string.Join("; ", question.Options.Select(option => option.Text)));
        Assert.Null(FixtureImport.Edit(list, asked, Id));

        season = Taken(season, list, Answers.None.With("Q-both-changed", answer));
        Assert.Equal(stands, Told(Seven(season)));
        var again = FixtureUpdate.Compare(season.AllMatches, list);
        Assert.Empty(again.Questions);
        Assert.All(again.Changes, change => Assert.False(change.IsWritten));
    }

    [Fact]
    public void A_list_that_follows_the_coach_asks_nothing_and_from_then_on_its_word_is_known()
    {
        var season = Taken(Started(), Read(Listed), Answers.None);
        season = Applied(season, Hand(season, "moved"));
        var followed = Read(Listed.Replace("2026-09-05,18:00", "2026-09-06,16:00", StringComparison.Ordinal));
        var update = FixtureUpdate.Compare(season.AllMatches, followed);
        Assert.Empty(update.Questions);
        Assert.All(update.Changes, change => Assert.Equal(ChangeKind.Unchanged, change.Kind));
        season = Taken(season, followed, Answers.None);
        Assert.Null(Seven(season).Source!.Listed);
        Assert.Equal("2026-09-05 18:00 Confirmed Home Kalnes Vale Hall", Told(Seven(Taken(season, Read(Listed), Answers.None))));
    }

    [Fact]
    public void A_match_picked_out_of_its_window_by_hand_stays_picked_until_the_list_names_another_day()
    {
        const string window = "Id,Date,Home,Away\n7,week of 14 September 2026,Harbour Vale,Kalnes\n8,2026-09-05,Harbour Vale,Brovik\n";
        var season = Taken(Started(), Read(window), Answers.None);
        Assert.Equal(MatchStatus.Window, Seven(season).Status);
        season = Applied(season, new MoveMatch(Seven(season).Id, new DateOnly(2026, 9, 16)));
        Assert.Equal((ChangeKind.Unchanged, MatchStatus.Confirmed), (FixtureUpdate.Compare(season.AllMatches, Read(window)).Changes[0].Kind, Seven(season).Status));
        var named = Read(window.Replace("week of 14 September 2026", "2026-09-17", StringComparison.Ordinal));
        Assert.Equal("Q-both-changed", Assert.Single(FixtureUpdate.Compare(season.AllMatches, named).Questions).Id);
        var narrower = Read(window.Replace("14 September", "21 September", StringComparison.Ordinal));
        Assert.Equal(MatchStatus.Window, Seven(Taken(season, narrower, Answers.None.With("Q-both-changed", "list"))).Status);
    }

    [Fact]
    public void Two_confirmed_matches_on_one_day_are_told_once_and_hinder_nothing()
    {
        var season = Taken(Started(), Read(Listed), Answers.None);
        var cup = Read("Date,Time,Home,Away\n2026-09-12,11:00,Harbour Vale,Turnes\n2026-09-19,11:00,Harbour Vale,Skarholm\n");
        var update = FixtureUpdate.Compare(season.AllMatches, cup);
        Assert.Equal("More than one match on Sat 12 Sep 2026: Brovik 18:00, Turnes 11:00.", Assert.Single(update.Notes));
        Assert.All(update.Changes, change => Assert.Equal(ChangeKind.Added, change.Kind));
        season = Taken(season, cup, Answers.None);
        Assert.Empty(FixtureUpdate.Compare(season.AllMatches, cup).Notes);
    }

    [Theory]
    [InlineData("2026-09-12", "postponed")]
    [InlineData("2026-09-12", "cancelled")]
    [InlineData("week of 7 September 2026", "")]
    public void A_match_that_is_off_or_has_no_day_yet_shares_no_day(string day, string status) =>
        Assert.Empty(FixtureUpdate.Compare([], Read($"Date,Home,Away,Status\n2026-09-12,Harbour Vale,Kalnes,\n{day},Brovik,Harbour Vale,{status}\n")).Notes);

    [Fact]
    public void A_played_match_on_another_day_is_told()
    {
        const string played = "Id,Date,Home,Away,Result\n7,2026-09-05,Harbour Vale,Kalnes,30-28\n";
        var season = Taken(Started(), Read(played), Answers.None);
        var update = FixtureUpdate.Compare(season.AllMatches, Read(played.Replace("09-05", "09-06", StringComparison.Ordinal)));
        Assert.Equal("The match against Kalnes was played on Sat 5 Sep 2026 (30-28); the list now has it on Sun 6 Sep 2026.", Assert.Single(update.Notes));
        Assert.Equal(ChangeKind.Moved, Assert.Single(update.Changes).Kind);
        Assert.Empty(FixtureUpdate.Compare(season.AllMatches, Read(played)).Notes);
    }

    private static SeasonEdit Hand(Season season, string how)
    {
        var match = season.AllMatches[0];
        return how switch
        {
            "moved" => new MoveMatch(match.Id, new DateOnly(2026, 9, 6), KickOff: new TimeOnly(16, 0)),
            "put" => new SetMatch(match with { Place = "Old Hall", Source = null }),
            "postponed" => new SetMatch(match with { Day = null, KickOff = null, Status = MatchStatus.Postponed }),
            _ => new SetMatch(match with { Opponent = "Kalnes HK", Venue = Venue.Neutral }),
        };
    }

    private static Match Seven(Season season) => season.AllMatches.Single(match => match.Source?.Id == "7");

    private static string Told(Match match) => string.Create(CultureInfo.InvariantCulture,
        $"{match.Day?.ToString("O", CultureInfo.InvariantCulture) ?? "-"} {match.KickOff?.ToString("HH:mm", CultureInfo.InvariantCulture) ?? "-"} {match.Status} {match.Venue} {match.Opponent} {match.Place}");

    [Fact]
    public void A_blocked_list_writes_nothing()
    {
        var list = FixtureCases.Read("samples/fixtures-05-which-way-round.csv");
        Assert.Null(FixtureImport.Edit(list, FixtureUpdate.Compare([], list), Id));
    }

    [Fact]
    public void A_chain_of_cup_rounds_waits_for_the_matches_its_words_name()
    {
        var season = Taken(Started(), FixtureCases.Read("samples/fixtures-07-cup-windows.csv"), Answers.None);
        var byId = season.AllMatches.ToDictionary(match => match.Source!.Id!, StringComparer.Ordinal);
        Assert.Equal([byId["LC-1"].Id, byId["LC-2"].Id, byId["LC-3"].Id], new[] { "LC-2", "LC-3", "LC-4" }.Select(id => byId[id].Condition!.On!.Value));
        Assert.Equal(new Series("Play-off", 2, 3), byId["PO-2"].Series);
        Assert.Equal(Importance.Friendly, byId["FR-4"].Importance);
    }

    private static FixtureList Read(string text) => FixtureReader.Read(SourceText.OfText("list.csv", text), new FixtureOptions("Harbour Vale"));

    private static MatchId Id(FixtureRow row) => new("m" + string.Concat(System.Security.Cryptography.SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(row.NaturalKey)).Take(8).Select(b => b.ToString("x2", CultureInfo.InvariantCulture))));

    private static Season Started() => Applied(Season.Empty(new SeasonId("s")), new StartSeason(new DateOnly(2026, 7, 6), DayOfWeek.Monday, Enumerable.Range(1, 52).Select(n => new WeekId($"w{n}")).ToValueList(), new TeamCard("Harbour Vale")));

    private static Season Taken(Season season, FixtureList list, Answers answers) =>
        Applied(season, FixtureImport.Edit(list, FixtureUpdate.Compare(season.AllMatches, list, answers), Id)!);

    private static Season Applied(Season season, SeasonEdit edit) => season.With(Assert.IsType<Accepted>(Decider.Decide(season, edit)).Step);

    private static string Words(ChangeKind kind) => kind switch
    {
        ChangeKind.TimeKnown => "time now known",
        ChangeKind.VenueSwapped => "venue swapped",
        _ => kind.ToString().ToLowerInvariant(),
    };
}
