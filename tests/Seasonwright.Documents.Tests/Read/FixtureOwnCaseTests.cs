using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Fixtures;

namespace Seasonwright.Documents.Tests.Read;

/// <summary>Lists unlike the samples: other delimiters, languages, headings and layouts; see tests/Cases/fixtures/own/ORIGIN.md.</summary>
public class FixtureOwnCaseTests
{
    public static TheoryData<string> Lists => [.. Directory.GetFiles(Path.Combine(FixtureCases.Folder, "own"), "*.expected").Select(file => Path.GetFileNameWithoutExtension(file)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Lists))]
    public void It_is_read_as_a_careful_human_would(string name)
    {
        var read = FixtureCases.Read($"own/{name}", "Harbour Vale");
        Assert.Empty(read.Problems);
        Assert.Equal(File.ReadAllText(Path.Combine(FixtureCases.Folder, "own", name + ".expected")).TrimEnd(), string.Join('\n', read.Rows.Select(FixtureCases.Text)));
    }

    [Fact]
    public void A_heading_can_be_taken_for_another_thing_by_an_answer()
    {
        var source = SourceText.OfText("list", "Date,Rivals,Opponent\n2026-09-05,Kalnes,x\n");
        Assert.Equal("x", FixtureReader.Read(source, new FixtureOptions()).Rows[0].Opponent);
        var answers = Answers.None.With("column:rivals", "Opponent").With("column:opponent", "Remarks");
        Assert.Equal("Kalnes", FixtureReader.Read(source, new FixtureOptions(Answers: answers)).Rows[0].Opponent);
    }

    [Fact]
    public void Days_that_end_before_they_begin_are_asked()
    {
        var source = SourceText.OfText("list", "Date;Home;Away\n2026-09-05;Harbour Vale;Kalnes\nSaturday 26 September 2026 - 2026-09-19;Brovik;Harbour Vale\n");
        var open = FixtureReader.Read(source, new FixtureOptions("Harbour Vale"));
        Assert.Equal((null, null), (open.Rows[1].Day, open.Rows[1].LastDay));
        Assert.Contains(Assert.Single(open.Questions).Id, open.Rows[1].Ask, StringComparer.Ordinal);
        var answered = FixtureReader.Read(source, new FixtureOptions("Harbour Vale", Answers.None.With(open.Questions[0].Id, "2026-09-26")));
        Assert.Equal((new DateOnly(2026, 9, 26), null), (answered.Rows[1].Day, answered.Rows[1].LastDay));
        Assert.Empty(answered.Questions);
    }

    /// <summary>"19:30" where no heading says what it is: by answer, or by the day it is read on.</summary>
    [Fact]
    public void A_figure_is_a_kick_off_or_a_result_by_answer_and_a_kick_off_in_a_match_still_to_come()
    {
        var source = FixtureCases.Source("own/figures-played-and-planned.txt");
        (TimeOnly? KickOff, string? Result)[] Read(string? answer, DateOnly? today = null)
        {
            var answers = answer is null ? null : Answers.None.With("Q-figures", answer);
            return [.. FixtureReader.Read(source, new FixtureOptions("Harbour Vale", answers, Today: today)).Rows.Skip(2).Select(row => (row.KickOff, row.Result))];
        }
        Assert.Equal([(new TimeOnly(19, 30), null), (new TimeOnly(17, 0), null)], Read("kick-off"));
        Assert.Equal([(null, "19-30"), (null, "0-17")], Read("result"));
        Assert.Equal([(new TimeOnly(19, 30), null), (new TimeOnly(17, 0), null)], Read(null, new DateOnly(2026, 9, 25)));
        Assert.Equal([(null, null), (new TimeOnly(17, 0), null)], Read(null, new DateOnly(2026, 9, 26)));
    }

    [Fact]
    public void Two_teams_of_a_club_in_one_league_list_are_told_apart_and_only_one_is_read()
    {
        var source = SourceText.OfText("list", "Date;Age group;Home;Away\n5.9.2026;U16;Harbour Vale;Kalnes\n6.9.2026;U18;Harbour Vale;Kalnes\n12.9.2026;U16;Brovik;Skarholm\n13.9.2026;U18;Brovik;Harbour Vale\n");
        var open = FixtureReader.Read(source, new FixtureOptions("Harbour Vale"));
        Assert.True(open.IsBlocked);
        Assert.Empty(open.Rows);
        Assert.Equal("U16 U18", string.Join(' ', Assert.Single(open.Questions, question => question.Id == "Q-squad").Options.Select(option => option.Id)));
        var read = FixtureReader.Read(source, new FixtureOptions("Harbour Vale", Answers.None.With("Q-squad", "U18")));
        Assert.Equal([3, 5], read.Rows.Select(row => row.Line));
        Assert.Equal([(1, "headings"), (2, "other-squad"), (4, "other-teams")], read.Skipped.Where(skipped => skipped.Kind != "blank").Select(skipped => (skipped.Line, skipped.Kind)));
        Assert.False(read.IsBlocked);
    }

    /// <summary>Principle 2: which of a club's teams is meant is asked, also where only a row of its own above the matches names it.</summary>
    [Fact]
    public void Teams_named_by_rows_of_their_own_are_told_apart()
    {
        const string list = "Date,Opponents,Venue,Push back\n1st XI,,,\n5/9/26,Wexcombe,H,2.15pm\n26/9/26,Ravensea,H,2pm\n2nd XI,,,\n5/9/26,Wexcombe,H,2.15pm\n26/9/26,Ravensea,A,2pm\n";
        FixtureList Read(string text, string? answer = null) => FixtureReader.Read(SourceText.OfText("list", text), new FixtureOptions(Answers: answer is null ? null : Answers.None.With("Q-team", answer)));
        Assert.True(Read(list).IsBlocked);
        Assert.Empty(Read(list).Rows);
        Assert.Equal([3, 4], Read(list, "1st XI").Rows.Select(row => row.Line));
        Assert.Equal([(6, Venue.Home), (7, Venue.Away)], Read(list, "2nd XI").Rows.Select(row => (row.Line, row.Venue!.Value)));
        // One team's name, and the names of competitions, tell nothing apart.
        Assert.Empty(Read(list.Replace("2nd XI,,,\n", "", StringComparison.Ordinal).Replace("5/9/26,Wexcombe,H,2.15pm\n26/9/26,Ravensea,A,2pm\n", "", StringComparison.Ordinal)).Questions);
        Assert.Empty(Read("Date,Opponents,Venue\nWomen's League,,\n26/9/26,Wexcombe,H\nWomen's Cup,,\n3/10/26,Ravensea,A\n").Questions);
    }

    [Fact]
    public void A_blank_date_is_the_one_above_or_none_by_answer()
    {
        List<DateOnly?> Read(string list, string answer) => [.. FixtureCases.Read($"own/{list}", "Harbour Vale", Answers.None.With("Q-blank-dates", answer)).Rows.Select(row => row.Day)];
        Assert.Equal([new(2026, 9, 5), new(2026, 9, 12), new(2026, 9, 19)], Read("dates-once.csv", "as-above"));
        Assert.Equal([new DateOnly(2026, 9, 5), null, null], Read("dates-once.csv", "unknown"));
        Assert.Equal([new DateOnly(2026, 9, 5), new(2026, 9, 26), new(2026, 9, 26), null, new(2026, 10, 3), new(2026, 10, 3)], Read("dates-once-or-open.csv", "as-above"));
        // What is offered is the question's own answer, and only where no team would play twice a day.
        Assert.Equal("as-above", Assert.Single(FixtureCases.Read("own/dates-once.csv", "Harbour Vale").Questions).Offered);
        Assert.Null(Assert.Single(FixtureCases.Read("own/dates-open-rounds.csv", "Harbour Vale").Questions).Offered);
    }

    [Fact]
    public void Headings_that_are_not_known_are_offered_by_their_cells_and_mapped_by_an_answer()
    {
        FixtureList Read(params (string Question, string Answer)[] given) =>
            FixtureCases.Read("own/headings-unknown.csv", "Harbour Vale", given.Aggregate(Answers.None, (answers, answer) => answers.With(answer.Question, answer.Answer)));
        var guessed = Read();
        Assert.Equal(2, guessed.Reads.HeadingLine);
        Assert.Equal("Ottelu , Päivä Date, Kello KickOff, Koti Home, Vieras Away, Tulos Result", string.Join(", ", guessed.Reads.Headings.Select(use => $"{use.Heading} {use.Role}")));
        Assert.Equal("pair-4-5", Assert.Single(guessed.Questions).Offered);
        Assert.Equal([Venue.Away, Venue.Home], Read(("Q-sides", "pair-5-4")).Rows.Select(row => row.Venue!.Value));
        var mapped = Read(("column:koti", "Away"), ("column:vieras", "Home"), ("column:ottelu", "SourceId"), ("column:tulos", "none"));
        Assert.Empty(mapped.Questions);
        Assert.Equal([("4011", Venue.Away, null), ("4014", Venue.Home, null)], mapped.Rows.Select(row => (row.SourceId!, row.Venue!.Value, row.Result)));
    }

    [Fact]
    public void Who_plays_is_asked_where_no_column_shows_it_and_every_row_waits()
    {
        var source = SourceText.OfText("list", "Päivä;Vastustaja;Sali\n5.9.2026;Kalnes;Vale Hall\n12.9.2026;Brovik;Brovik Arena\n");
        var open = FixtureReader.Read(source, new FixtureOptions("Harbour Vale"));
        Assert.True(open.IsBlocked);
        Assert.Empty(open.Rows);
        Assert.Empty(open.Problems);
        var question = Assert.Single(open.Questions);
        Assert.Null(question.Offered);
        Assert.Equal("pair-2-3 opponent-2 opponent-3", string.Join(' ', question.Options.Select(option => option.Id)));
        Assert.Equal([(2, "waits"), (3, "waits")], open.Skipped.Where(skipped => skipped.Kind == "waits").Select(skipped => (skipped.Line, skipped.Kind)));
        Assert.Equal("Kalnes, Brovik", string.Join(", ", FixtureReader.Read(source, new FixtureOptions("Harbour Vale", Answers.None.With(question.Key, "opponent-2"))).Rows.Select(row => row.Opponent)));
        var mapped = FixtureReader.Read(source, new FixtureOptions(Answers: Answers.None.With("column:vastustaja", "Opponent").With("column:sali", "Venue")));
        Assert.Equal([("Kalnes", "Vale Hall"), ("Brovik", "Brovik Arena")], mapped.Rows.Select(row => (row.Opponent!, row.Place!)));
        Assert.Empty(mapped.Questions);
    }

    /// <summary>A first line that is no row of headings leaves the list to the reader of loose lines.</summary>
    [Theory]
    [InlineData("News\tTable\tSquad\tContact\n5 Sep 2026\tHarbour Vale\tv\tKalnes\n12 Sep 2026\tBrovik\tv\tHarbour Vale\n")]
    [InlineData("Women\tHarbour Vale\n5 Sep 2026\t18:00\tHarbour Vale v Kalnes\n12 Sep 2026\t18:00\tBrovik v Harbour Vale\n")]
    public void A_title_is_no_row_of_headings(string text)
    {
        var read = FixtureReader.Read(SourceText.OfText("list", text), new FixtureOptions("Harbour Vale"));
        Assert.Null(read.Reads.HeadingLine);
        Assert.Empty(read.Questions);
        Assert.Equal("Kalnes, Brovik", string.Join(", ", read.Rows.Select(row => row.Opponent)));
    }

    [Fact]
    public void Answers_are_put_in()
    {
        FixtureList Sample(string name, string team, params (string Id, string Answer)[] given) =>
            FixtureCases.Read($"samples/{name}", team, given.Aggregate(Answers.None, (answers, answer) => answers.With(answer.Id, answer.Answer)));
        Assert.Equal("Skarholm IF", Sample("fixtures-01-league-ids.csv", "Harbour Vale", ("Q-spelling", "one")).Rows.Single(row => row.Line == 28).Club);
        Assert.Equal("3-1", Sample("fixtures-02-semicolon-cp1252.csv", "", ("Q-score-order", "home-first")).Rows.Single(row => row.Line == 5).Result);
        Assert.Equal(new DateOnly(2026, 12, 5), Sample("fixtures-02-semicolon-cp1252.csv", "", ("Q-postponed", "2026-12-05")).Rows.Single(row => row.Line == 11).Day);
        Assert.Equal(new TimeOnly(12, 15), Sample("fixtures-03-no-year-utf16.txt", "", ("Q-midnight", "12:15")).Rows.Single(row => row.Line == 7).KickOff);
        Assert.Equal([4, 9], Sample("fixtures-04-school-rugby-dmy.csv", "", ("Q-team", "2nd XV")).Rows.Select(row => row.Line).ToArray());
        Assert.DoesNotContain(Sample("fixtures-04-school-rugby-dmy.csv", "1st XV", ("Q-same", "one")).Rows, row => row.Line == 7);
        Assert.Equal((new DateOnly(2026, 10, 21), null), Sample("fixtures-06-pasted-rounds.txt", "Harbour Vale", ("Q-week43", "2026-10-21")).Rows.Where(row => row.Line == 27).Select(row => (row.Day!.Value, row.LastDay)).Single());
        Assert.Equal("-Brovik", Sample("fixtures-07-cup-windows.csv", "", ("Q-signs", "no")).Rows.Single(row => row.Line == 12).Opponent);
        Assert.Equal(new TimeOnly(19, 30), Sample("fixtures-13-month-first.csv", "Tellwood", ("Q-am", "19:30")).Rows.Single(row => row.Line == 9).KickOff);
    }
}
