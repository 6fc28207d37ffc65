using Seasonwright.Core;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.Home;
using Seasonwright.Documents.Tests.HandOut.Cards;
using Seasonwright.Documents.Tests.Year;
using static Seasonwright.Documents.Tests.HandOut.Cards.SampleCards;
using static Seasonwright.Documents.Tests.HandOut.Home.SampleHome;

namespace Seasonwright.Documents.Tests.HandOut.Home;

/// <summary>What stands on the pages of a home programme, and that all of it has its place.</summary>
public class HomeTests
{
    private static HomeSheet Only(Player player, HomeProgramme? programme = null) => Assert.Single(Pages([player], programme).Sheets);

    [Fact]
    public void Every_day_of_every_week_is_told_and_free_days_are_called_free()
    {
        var sheet = Only(Player("ida", "Ida").Ran());
        Assert.Equal("Week 1, Week 2, Week 3", string.Join(", ", sheet.Weeks.Select(week => week.Name)));
        Assert.All(sheet.Weeks, week => Assert.Equal("Whole body, Free, Intervals, Free, Whole body + Steady run, Free, Free", string.Join(", ", week.Days.Select(day => string.Join(" + ", day.Does)))));
        Assert.Equal("Mon 12 Jul", sheet.Weeks[0].Days[0].Day);
        Assert.Equal("Mon: Whole body, Wed: Intervals, Fri: Whole body + Steady run", string.Join(", ", sheet.Parts.Select(part => part.Title)));
        Assert.Equal("After school", sheet.Parts[2].Note);
    }

    [Fact]
    public void Sets_efforts_and_runs_stand_week_by_week()
    {
        var sheet = Only(Player("ida", "Ida").Ran());
        string Row(int part, string name) => string.Join(" | ", sheet.Parts[part].Rows.Single(row => row.Name == name).Weeks);
        // By 2.5 % a week: a repetition less in reserve, never below two.
        Assert.Equal("3 x 8 to 20, leave 3 | 3 x 8 to 20, leave 2 | 3 x 8 to 20, leave 2", Row(0, "Goblet squat"));
        Assert.Equal("3 x 8 to 20, leave 2, every week", Row(0, "Press-up"));
        // 95 % of 4 m/s is 3.8 m/s: 300 m in 79 s. A fifth more of six a week: 7.2, 8.4.
        Assert.Equal("6 x 300 m in 79 s | 7 x 300 m in 79 s | 8 x 300 m in 79 s", Row(1, "Intervals"));
        // 70 % is 2.8 m/s: 1,500 s are 4,200 m, a kilometre 357 s.
        Assert.Equal("25 min, about 4200 m, every week", Row(2, "Steady run"));
        Assert.Equal("70 % of your own speed, 5:57 min a kilometre", sheet.Parts[2].Rows.Single(row => row.Name == "Steady run").How);
        Assert.Equal("tempo 2-0-X-0 · rest 90 s · Slowly down", sheet.Parts[0].Rows.Single(row => row.Name == "Goblet squat").How);
        Assert.Contains("1500 m in 6:15 min, Tue 29 Jun 2027", Assert.Single(sheet.Notes), StringComparison.Ordinal);
    }

    /// <summary>Eight with three left are eleven possible, 70 % in the textbook's table.</summary>
    [Fact]
    public void Kilos_stand_where_a_maximum_is_known_and_more_repetitions_where_the_heaviest_is_too_light()
    {
        Player Lifts(decimal most) => Player("ida", "Ida") with { Lifts = [new(Guid.Empty, new("ida"), new("goblet-squat"), Day.AddDays(-7), new Weight(most), 1, null, default)] };
        string Squat(decimal most) => Only(Lifts(most)).Parts[0].Rows.Single(row => row.Name == "Goblet squat").Weeks[0];
        Assert.Equal("3 x 8, 16 kg", Squat(24));
        Assert.Equal("3 x 8 to 20, 20 kg, leave 3", Squat(60));
    }

    [Fact]
    public void Without_a_test_it_is_told_how_hard_it_feels()
    {
        var sheet = Only(Player("ida", "Ida"));
        Assert.Equal("6 x 300 m at RPE 8", sheet.Parts[1].Rows[0].Weeks[0]);
        Assert.Equal("RPE 8: single words only · walk 90 s between", sheet.Parts[1].Rows[0].How);
        Assert.Equal("25 min at RPE 3, every week", sheet.Parts[2].Rows[^1].Weeks[0]);
        Assert.Contains("no running test of yours", Assert.Single(sheet.Notes), StringComparison.Ordinal);
        Assert.DoesNotContain("m/s", string.Join(' ', sheet.Parts.SelectMany(part => part.Rows).SelectMany(row => row.Weeks)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_restriction_changes_the_pages_and_nothing_on_them_says_why()
    {
        foreach (var tag in new[] { RestrictionTag.NoJump, RestrictionTag.NoSprint, RestrictionTag.UpperBodyOnly, RestrictionTag.NoLoadedKneeFlexionPast90 })
        {
            var home = Pages([Player("ida", "Ida Norlund").Ran().Reported(Availability.Modified(new([tag], new Minutes(45))))]);
            var sheet = Assert.Single(home.Sheets);
            Assert.True(sheet.IsModified);
            Assert.Equal("At most 45 minutes of training a day: stop there, wherever you are.", sheet.Notes[0]);
            var words = TextsOf(home).ToLowerInvariant();
            Assert.Contains("modified", words, StringComparison.Ordinal);
            Assert.All((string[])[tag.Word(), "restrict", "injur", "knee past", "axial", "ruled out"], word => Assert.DoesNotContain(word, words, StringComparison.Ordinal));
        }
        Assert.False(Only(Player("eva", "Eva")).IsModified);
    }

    [Fact]
    public void Who_is_out_or_to_be_asked_gets_a_page_without_work()
    {
        foreach (var availability in new[] { Availability.Out, Availability.Modified(Restrictions.None) })
        {
            var home = Pages([Player("ida", "Ida").Ran().Reported(availability)]);
            var sheet = Assert.Single(home.Sheets);
            Assert.True(sheet is { AsksFirst: true, Weeks.Count: 0, Parts.Count: 0 });
            Assert.Single(HomePaper.Of(home, PaperSize.A4));
            var words = TextsOf(home);
            Assert.Contains("ask the clinician first", words, StringComparison.Ordinal);
            Assert.All((string[])["Goblet", "300 m", "Whole body", "Free", "injur"], word => Assert.DoesNotContain(word, words, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Every_player_is_told_when_to_stop_and_whom_to_call()
    {
        var home = Pages([Player("ida", "Ida").Ran(), Player("eva", "Eva").Reported(Availability.Out)]);
        Assert.Equal("Dr Wexcombe (doctor), strength and conditioning", string.Join(", ", home.Call));
        foreach (var sheet in home.Sheets)
        {
            var words = TextsOf(home with { Sheets = [sheet] });
            Assert.All((string[])["Stop at once and get help", "local emergency number first", "chest", "fainting", "breathlessness out of proportion", "knock to the head", "fever", "below the neck", "Dr Wexcombe (doctor)", "Local rules and your clinician come before this page", "sharp pain"],
                word => Assert.Contains(word, words, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Who_is_under_18_takes_a_letter_home_and_lifts_nothing_close_to_a_maximum()
    {
        var young = Pages([Player("ida", "Ida Norlund").Aged(16).Ran()]);
        Assert.True(Assert.Single(young.Sheets).IsMinor);
        var words = TextsOf(young);
        Assert.All((string[])["To the guardian of Ida Norlund", "There are no maximal lifts", "3 weeks with up to 3 days of training a week and at least 4 free days", "Mon: Whole body: Hip hinge", "Read by (guardian)", "may be stopped at any time"], word => Assert.Contains(word, words, StringComparison.Ordinal));
        Assert.DoesNotContain("guardian", TextsOf(Pages([Player("ida", "Ida Norlund").Aged(18).Ran()])), StringComparison.Ordinal);
        // Also who asks first takes one: nobody at home should wonder.
        Assert.Contains("There is no home programme for the time being", TextsOf(Pages([Player("ida", "Ida").Aged(16).Reported(Availability.Out)])), StringComparison.Ordinal);
    }

    [Fact]
    public void Only_who_it_is_for_gets_pages()
    {
        Assert.Equal("Eva", Assert.Single(Pages([Player("ida", "Ida"), Player("eva", "Eva")], Break with { People = [new("eva")] }).Sheets).Name);
    }

    public static TheoryData<string, int, int> Papers => new(from paper in new[] { "a4", "letter" } from weeks in new[] { 1, 2, 6 } from long_ in new[] { 1, 12 } select (paper, weeks, long_));

    /// <summary>On every paper, for every length: each text whole, within the page, at a size that can be read and over no other.</summary>
    [Theory]
    [MemberData(nameof(Papers))]
    public void Everything_has_its_place(string id, int weeks, int times)
    {
        var paper = PaperSize.Find(id)!;
        var name = string.Join(' ', Enumerable.Repeat("Wilhelmina", times));
        var home = Pages([Player("ida", name, "4/5").Aged(16).Ran(), Player("eva", "Eva"), Player("out", "Ona").Reported(Availability.Out)], Break with { Weeks = weeks, Name = string.Join(' ', Enumerable.Repeat("Break", times)) });
        var pages = HomePaper.Of(home, paper);
        Assert.Equal(pages, HomePaper.Of(home, paper));
        foreach (var page in pages)
        {
            var texts = page.Tracks.SelectMany(track => track.Flat()).OfType<TextRun>().Select(text => (Area: Ink.Around(text), text)).ToList();
            foreach (var (area, text) in texts)
            {
                Assert.True(area.X >= -0.02 && area.Right <= (paper.Width - 60) / 0.75 + 0.5 && area.Bottom <= (paper.Height - 60) / 0.75 + 0.5, $"\"{text.Text}\" {area}");
                Assert.True(text.Style.Size * 0.75 >= paper.LeastText, text.Text);
                if (times == 1) Assert.DoesNotContain("…", text.Text, StringComparison.Ordinal);
            }
            foreach (var (one, other) in texts.SelectMany((one, at) => texts.Skip(at + 1).Select(other => (one, other))))
                Assert.False(Ink.Overlaps(one.Area, other.Area), $"\"{one.text.Text}\" over \"{other.text.Text}\"");
        }
        Assert.Equal(HandOuts.Home(home, paper).Bytes, HandOuts.Home(home, paper).Bytes);
        Assert.EndsWith($"-home-2027-07-12{(id == "letter" ? "-letter" : "")}.pdf", HandOuts.Home(home, paper).Name, StringComparison.Ordinal);
    }

    private static string TextsOf(SquadHome home) => string.Join(' ', HomePaper.Of(home, PaperSize.A4).SelectMany(page => page.Tracks).SelectMany(track => track.Flat()).OfType<TextRun>().Select(text => text.Text));
}
