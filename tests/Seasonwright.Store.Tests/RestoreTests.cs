namespace Seasonwright.Store.Tests;

public sealed class RestoreTests : IDisposable
{
    private readonly TemporaryFolder place = new();

    private string Copy => place.In("copy.db");

    public void Dispose() => place.Dispose();

    [Fact]
    public async Task A_backup_comes_back_and_what_was_there_is_kept()
    {
        var (old, now) = await TwoVersions();
        var kept = Restore.From(Copy, place.Data, TimeProvider.System);
        Assert.Equal(old, await place.SaidAsync());
        Assert.Equal(Path.Combine(place.Data, "backups"), Path.GetDirectoryName(kept));

        Restore.From(kept!, place.Data, TimeProvider.System);
        Assert.Equal(now, await place.SaidAsync());
        Assert.Equal(2, Directory.GetFiles(Path.Combine(place.Data, "backups")).Length);
    }

    [Fact]
    public async Task What_a_killed_process_left_in_its_write_ahead_log_is_kept_too()
    {
        await TwoVersions();
        Directory.Delete(place.Data, recursive: true);
        using (var writer = Child.Start(place.Data, 100_000))
        {
            for (var line = 0; line < 5; line++) await writer.StandardOutput.ReadLineAsync();
            writer.Kill();
            await writer.WaitForExitAsync();
        }
        Assert.NotEqual(0, new FileInfo(place.Database + "-wal").Length);
        var kept = Restore.From(Copy, place.Data, TimeProvider.System);
        Assert.DoesNotContain("writer", await place.SaidAsync(), StringComparison.Ordinal);
        Restore.From(kept!, place.In("second"), TimeProvider.System);
        Assert.Contains("writer", await place.SaidAsync("second"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_folder_in_use_is_refused()
    {
        var (_, now) = await TwoVersions();
        using (await place.OpenAsync())
            Assert.Equal(StoreTroubleKind.InUse, Assert.Throws<StoreTrouble>(() => Restore.From(Copy, place.Data, TimeProvider.System)).Kind);
        Assert.Equal(now, await place.SaidAsync());
        Assert.False(Directory.Exists(Path.Combine(place.Data, "backups")));
    }

    public static TheoryData<string, StoreTroubleKind> NoBackups => new()
    {
        { "missing", StoreTroubleKind.Unreachable },
        { "empty", StoreTroubleKind.NotOurs },
        { "text", StoreTroubleKind.NotOurs },
        { "foreign", StoreTroubleKind.NotOurs },
        { "truncated", StoreTroubleKind.Damaged },
        { "newer", StoreTroubleKind.Newer },
        { "folder", StoreTroubleKind.Unreachable },
    };

    [Theory]
    [MemberData(nameof(NoBackups))]
    public async Task A_file_that_is_no_backup_of_ours_changes_nothing(string what, StoreTroubleKind kind)
    {
        var (_, now) = await TwoVersions();
        var file = Damage.Make(what, Copy, place.In(what));
        var trouble = Assert.Throws<StoreTrouble>(() => Restore.From(file, place.Data, TimeProvider.System));
        Assert.Equal((kind, file), (trouble.Kind, trouble.Subject));
        Assert.Equal(now, await place.SaidAsync());
        Assert.False(Directory.Exists(Path.Combine(place.Data, "backups")));
        Assert.Empty(Directory.GetFiles(place.Data, "*.incoming*"));
    }

    [Fact]
    public async Task A_damaged_database_gives_way_to_the_backup_and_is_kept_byte_for_byte()
    {
        var (old, _) = await TwoVersions();
        Damage.Make("text", Copy, place.Database);
        var damaged = await File.ReadAllBytesAsync(place.Database);
        var kept = Restore.From(Copy, place.Data, TimeProvider.System);
        Assert.Equal(damaged, await File.ReadAllBytesAsync(kept!));
        Assert.Equal(old, await place.SaidAsync());
    }

    /// <summary>A backup, and a folder that has gone on since; what each of them says.</summary>
    private async Task<(string Old, string Now)> TwoVersions()
    {
        await place.FillAsync();
        var old = await place.SaidAsync();
        Backup.Write(place.Data, Copy);
        using (var folder = await place.OpenAsync()) await folder.Log.AppendAsync(Sample.Request(Sample.To(Sample.Season, 6, "after the backup")));
        return (old, await place.SaidAsync());
    }
}
