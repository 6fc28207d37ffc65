namespace Seasonwright.Store.Tests;

public sealed class PeopleTests : IDisposable
{
    private readonly TemporaryFolder place = new();

    public void Dispose() => place.Dispose();

    [Fact]
    public async Task The_person_at_this_machine_is_made_once_and_may_be_named()
    {
        string id;
        using (var folder = await place.OpenAsync())
        {
            var local = await folder.People.LocalAsync();
            Assert.Equal(("You", true), (local.DisplayName, local.IsLocal));
            await folder.People.PutAsync(id = local.Id, "Ines Marlow");
        }
        using var again = await place.OpenAsync();
        var named = await again.People.LocalAsync();
        Assert.Equal((id, "Ines Marlow", true), (named.Id, named.DisplayName, named.IsLocal));
        Assert.Equal([named], await again.People.AllAsync());
    }

    [Fact]
    public async Task Erasing_a_person_takes_name_and_preferences_and_leaves_the_log()
    {
        using (var folder = await place.OpenAsync())
        {
            await folder.Log.AppendAsync(Sample.Birth());
            await folder.People.PutAsync(Sample.Coach, "Xaveria Quill");
            await folder.Preferences.SetAsync(Sample.Coach, "tracks", "[3,1]");
            await folder.People.EraseAsync(Sample.Coach);
            Assert.DoesNotContain(await folder.People.AllAsync(), person => person.Id == Sample.Coach);
            Assert.Empty(await folder.Preferences.OfAsync(Sample.Coach));
            Assert.Equal(Sample.Coach, Assert.Single(await folder.Log.ReadAllAsync(Sample.Season)).Author);
        }
        Assert.DoesNotContain("Xaveria", System.Text.Encoding.UTF8.GetString(await File.ReadAllBytesAsync(place.Database)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Preferences_are_each_persons_own_and_the_last_write_wins()
    {
        using var folder = await place.OpenAsync();
        await folder.People.PutAsync("one", "One");
        await folder.People.PutAsync("two", "Two");
        await folder.Preferences.SetAsync("one", "fold", "true");
        await folder.Preferences.SetAsync("one", "fold", "false");
        await folder.Preferences.SetAsync("two", "fold", "1");
        await folder.Preferences.SetAsync("nobody", "fold", "2");
        Assert.Equal("false", Assert.Single(await folder.Preferences.OfAsync("one")).Value);
        Assert.Equal("1", Assert.Single(await folder.Preferences.OfAsync("two")).Value);
        Assert.Empty(await folder.Preferences.OfAsync("nobody"));
    }
}
