namespace Seasonwright.Store.Tests;

public sealed class FolderLockTests : IDisposable
{
    private readonly TemporaryFolder place = new();

    public void Dispose() => place.Dispose();

    [Fact]
    public async Task A_second_opener_is_refused_with_the_firsts_address_until_it_closes()
    {
        using (var first = await place.OpenAsync())
        {
            var early = await Assert.ThrowsAsync<StoreTrouble>(() => place.OpenAsync());
            Assert.Equal((StoreTroubleKind.InUse, place.Data, null), (early.Kind, early.Subject, early.RunningAt));

            first.Announce(new Uri("http://127.0.0.1:5210/"));
            var trouble = await Assert.ThrowsAsync<StoreTrouble>(() => place.OpenAsync());
            Assert.Equal(new Uri("http://127.0.0.1:5210/"), trouble.RunningAt);
            Assert.Contains("http://127.0.0.1:5210/", trouble.Message, StringComparison.Ordinal);
            await first.Log.AppendAsync(Sample.Birth());
        }
        Assert.Contains("season born", await place.SaidAsync(), StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(place.Data, "workspace.address")));
    }

    [Fact]
    public async Task A_killed_holder_holds_nothing()
    {
        using var holder = Child.Start(place.Data, 100_000);
        Assert.StartsWith("ack 1 ", await holder.StandardOutput.ReadLineAsync());
        var trouble = await Assert.ThrowsAsync<StoreTrouble>(() => place.OpenAsync());
        Assert.Equal(StoreTroubleKind.InUse, trouble.Kind);
        // An address the dead leave behind must not mislead the next one.
        await File.WriteAllTextAsync(Path.Combine(place.Data, "workspace.address"), "http://127.0.0.1:9/\n1\n");

        holder.Kill();
        await holder.WaitForExitAsync();
        using (await place.OpenAsync())
        {
            var next = await Assert.ThrowsAsync<StoreTrouble>(() => place.OpenAsync());
            Assert.Null(next.RunningAt);
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData("no address at all")]
    public async Task A_broken_address_is_no_address(string written)
    {
        using var first = await place.OpenAsync();
        await File.WriteAllTextAsync(Path.Combine(place.Data, "workspace.address"), written);
        Assert.Null((await Assert.ThrowsAsync<StoreTrouble>(() => place.OpenAsync())).RunningAt);
    }

    [Fact]
    public async Task A_file_in_the_folders_place_is_refused_in_words()
    {
        await File.WriteAllTextAsync(place.Data, "not a folder");
        var trouble = await Assert.ThrowsAsync<StoreTrouble>(() => place.OpenAsync());
        Assert.Equal(StoreTroubleKind.Unreachable, trouble.Kind);
        Assert.Equal("not a folder", await File.ReadAllTextAsync(place.Data));
    }

    [Fact]
    public async Task The_folder_is_its_owners_alone()
    {
        using var folder = await place.OpenAsync();
        if (!OperatingSystem.IsWindows())
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, File.GetUnixFileMode(place.Data));
    }
}
