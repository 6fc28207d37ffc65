using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.Home;

namespace Seasonwright.Truth.Tests.HandOut;

/// <summary>A home programme's paper as another reader finds it (poppler: pdfinfo, pdftotext): what was laid out can be read and copied.</summary>
public class HomeTruth
{
    [Fact]
    public async Task What_a_player_must_know_is_read_back_from_the_file()
    {
        var monday = new DateOnly(2027, 7, 5);
        SeasonEdit[] edits =
        [
            new StartSeason(monday, DayOfWeek.Monday, [.. Enumerable.Range(1, 4).Select(n => new WeekId($"w{n}"))], new("Harbour Vale")),
            new SetHomeProgramme(new(new("h"), "Summer break", monday, 2, new([Equipment.Track]), [new(DayOfWeek.Tuesday, null, new HomeRun(6, 300, WorkUnit.Metres, new Percent(95), 90))])),
        ];
        var season = edits.Aggregate(Season.Empty(new("s")), (now, edit) => now.With(Assert.IsType<Accepted>(Decider.Decide(now, edit)).Step));
        var player = new Player(new(new("ida"), "Norlund", "Ida", "4", [], new(2011, 3, 1), null), [new(new("ida"), new("team"), monday, null, LeadingDays.None)], [], [], [], [], [], [])
        { Runs = [new(Guid.Empty, new("ida"), monday, 1_500, 375, default)] };
        var home = SquadHome.Of(new SharedSeason(season, Setup.Empty(new("team")), Edition.Draft(monday)), season.HomeProgrammes.Single(), [player], new Dictionary<PersonId, string>());
        var path = Path.Combine(Path.GetTempPath(), $"home-{Guid.NewGuid():N}.pdf");
        try
        {
            await File.WriteAllBytesAsync(path, HandOuts.Home(home, PaperSize.A4).Bytes);
            Assert.Matches(@"Pages: +2\b", await Outside.RunAsync("pdfinfo", path));
            var read = string.Concat((await Outside.RunAsync("pdftotext", "-raw", path, "-")).Where(c => !char.IsWhiteSpace(c)));
            foreach (var text in new[] { "4 Ida Norlund", "Tue 6 Jul", "Intervals", "6 x 300 m in 79 s", "Stop at once and get help", "fever or chills", "Draft, Mon 5 Jul 2027", "To the guardian of Ida Norlund", "There are no maximal lifts", "Read by (guardian)" })
                Assert.Contains(text.Replace(" ", "", StringComparison.Ordinal), read, StringComparison.Ordinal);
            // Two weeks of seven days: one is worked on, six are called free.
            Assert.Equal(12, read.Split("Free").Length - 1 - (read.Split("Freedays").Length - 1));
        }
        finally
        {
            File.Delete(path);
        }
    }
}
