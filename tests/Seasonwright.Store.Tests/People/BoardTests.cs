using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;

namespace Seasonwright.Store.Tests;

/// <summary>What was tapped at the board is kept once, and goes with whom it is about and with the season.</summary>
public sealed class BoardTests : IDisposable
{
    private static readonly SessionId Gym = new("gym"), Other = new("other");

    private static readonly (Guid, PersonId?, string)[] Marks = [(new(1, 0, 0, new byte[8]), new("ysolde"), "came"), (new(2, 0, 0, new byte[8]), null, "rack")];

    private readonly TemporaryFolder place = new();

    public void Dispose() => place.Dispose();

    [Fact]
    public async Task Marks_survive_a_restart_and_what_is_sent_again_is_kept_once()
    {
        using (var folder = await place.OpenAsync())
        {
            await FillAsync(folder);
            Assert.True(await folder.Boards.AppendAsync(Sample.Season, Gym, [Marks[0], Marks[0]]));
            Assert.True(await folder.Boards.AppendAsync(Sample.Season, Gym, [(Marks[0].Item1, Marks[0].Item2, "otherwise"), Marks[1]]));
        }
        using var again = await place.OpenAsync();
        Assert.Equal("came rack", string.Join(' ', (await again.Boards.OfAsync(Sample.Season, Gym)).Order(StringComparer.Ordinal)));
        Assert.Empty(await again.Boards.OfAsync(Sample.Season, Other));
    }

    [Fact]
    public async Task Of_people_who_are_not_there_nothing_is_kept_and_of_no_season_neither()
    {
        using var folder = await place.OpenAsync();
        Assert.False(await folder.Boards.AppendAsync(Sample.Season, Gym, Marks));
        await FillAsync(folder);
        Assert.True(await folder.Boards.AppendAsync(Sample.Season, Gym, [(Guid.CreateVersion7(), new PersonId("nobody"), "came"), Marks[1]]));
        Assert.Equal(["rack"], await folder.Boards.OfAsync(Sample.Season, Gym));
    }

    [Fact]
    public async Task An_erased_person_takes_what_was_tapped_about_them_and_a_season_all_of_it()
    {
        using var folder = await place.OpenAsync();
        await FillAsync(folder);
        Assert.True(await folder.Boards.AppendAsync(Sample.Season, Gym, Marks));
        await folder.Athletes.EraseAsync(new("ysolde"));
        Assert.Equal(["rack"], await folder.Boards.OfAsync(Sample.Season, Gym));
        await folder.Log.RemoveAsync(Sample.Season, Sample.Coach);
        Assert.Equal("0", Sql.Ask(place.Database, "SELECT COUNT(*) FROM board_marks")?.ToString());
    }

    private static async Task FillAsync(DataFolder folder)
    {
        await folder.Log.AppendAsync(Sample.Birth());
        Assert.True(await folder.Athletes.PutAsync(Sample.Team, [(new Athlete(new("ysolde"), "Varnum", "Ysolde", "1", [], null, null), [new Membership(new("ysolde"), new(Sample.Team.ToString()), new(2027, 7, 5), null, LeadingDays.None)])]));
    }
}
