using System.Text;
using Seasonwright.Store.Log;
using Seasonwright.Store.People;

namespace Seasonwright.Store.Tests;

public sealed class SquadTests : IDisposable
{
    private static readonly SquadMember Ysolde = new("Varnum", "Ysolde", "1", "TW", new(1999, 3, 14), null, "71.5 kg", "183 cm", "A", "captain", """[{"exercise":"back squat","weight":85,"unit":"kg","reps":5}]""");
    private static readonly SquadMember Maren = new("Thistlewick", "Maren", null, null, null, 16, null, null, null, null, "[]");

    private readonly TemporaryFolder place = new();

    public void Dispose() => place.Dispose();

    [Fact]
    public async Task A_list_is_kept_in_its_order_and_the_next_one_takes_its_place()
    {
        using (var folder = await place.OpenAsync())
        {
            await folder.Log.AppendAsync(Sample.Birth());
            Assert.True(await folder.Squads.ReplaceAsync(Sample.Team, [Ysolde, Maren]));
        }
        using var again = await place.OpenAsync();
        Assert.Equal([Ysolde, Maren], await again.Squads.OfAsync(Sample.Team));
        Assert.True(await again.Squads.ReplaceAsync(Sample.Team, [Maren]));
        Assert.Equal([Maren], await again.Squads.OfAsync(Sample.Team));
        await again.Squads.EraseAsync(Sample.Team);
        Assert.Empty(await again.Squads.OfAsync(Sample.Team));
    }

    [Fact]
    public async Task Only_a_team_that_is_there_keeps_a_list()
    {
        using var folder = await place.OpenAsync();
        Assert.False(await folder.Squads.ReplaceAsync(Sample.Team, [Ysolde]));
        await folder.Log.AppendAsync(Sample.Birth());
        Assert.False(await folder.Squads.ReplaceAsync(Sample.Season, [Ysolde]));
        Assert.Empty(await folder.Squads.OfAsync(Sample.Team));
    }

    [Fact]
    public async Task A_removed_team_takes_its_list_with_it_also_from_the_file_and_leaves_the_others()
    {
        var other = new StreamId(Guid.NewGuid());
        using (var folder = await place.OpenAsync())
        {
            await folder.Log.AppendAsync(Sample.Birth());
            await folder.Log.AppendAsync(Sample.Request(Sample.To(other, 0, "stays") with { Creates = new NewStream(StreamKind.Team, "Second team") }));
            await folder.Squads.ReplaceAsync(Sample.Team, [Ysolde]);
            await folder.Squads.ReplaceAsync(other, [Maren]);
            await folder.Log.RemoveAsync(Sample.Team, Sample.Coach);
            Assert.Empty(await folder.Squads.OfAsync(Sample.Team));
            Assert.Equal([Maren], await folder.Squads.OfAsync(other));
            Assert.False(await folder.Squads.ReplaceAsync(Sample.Team, [Ysolde]));
        }
        var bytes = Encoding.UTF8.GetString(await File.ReadAllBytesAsync(place.Database));
        Assert.DoesNotContain("Ysolde", bytes, StringComparison.Ordinal);
        Assert.Contains("Thistlewick", bytes, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Names_are_in_no_entry_of_the_log_and_come_back_from_a_backup()
    {
        using (var folder = await place.OpenAsync())
        {
            await folder.Log.AppendAsync(Sample.Birth());
            await folder.Squads.ReplaceAsync(Sample.Team, [Ysolde, Maren]);
            Assert.DoesNotContain("Varnum", await Sample.Said(folder), StringComparison.Ordinal);
            Backup.Write(place.Data, place.In("copy.db"));
        }
        Restore.From(place.In("copy.db"), place.In("second"), TimeProvider.System);
        using var restored = await DataFolder.OpenAsync(place.In("second"), TimeProvider.System);
        Assert.Equal([Ysolde, Maren], await restored.Squads.OfAsync(Sample.Team));
    }
}
