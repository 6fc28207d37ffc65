namespace Seasonwright.Store.Tests;

/// <summary>A data folder that may be read but not written.</summary>
[System.Runtime.Versioning.UnsupportedOSPlatform("windows")]
public sealed class ReadOnlyTests : IDisposable
{
    private const UnixFileMode ReadFile = UnixFileMode.UserRead, ReadFolder = UnixFileMode.UserRead | UnixFileMode.UserExecute, All = ReadFolder | UnixFileMode.UserWrite;

    private readonly TemporaryFolder place = new();

    public void Dispose() => place.Dispose();

    /// <summary>Permissions do not bind root; without this capability they do. Dropping it needs no more rights than a container's root has.</summary>
    private static string[] Bound => Environment.UserName == "root" ? ["setpriv", "--bounding-set", "-dac_override"] : [];

    [Theory]
    [InlineData(true, true)]
    [InlineData(true, false)]
    [InlineData(false, true)]
    public async Task Is_told_in_words_and_what_was_asked_is_kept_once_it_may_be_written(bool folder, bool files)
    {
        var first = await Child.WriteAsync(place.Data, 3);
        Assert.Equal(0, first.Code);
        var said = await place.SaidAsync();
        var bytes = await File.ReadAllBytesAsync(place.Database);

        if (files) foreach (var file in Directory.GetFiles(place.Data)) File.SetUnixFileMode(file, ReadFile);
        if (folder) File.SetUnixFileMode(place.Data, ReadFolder);
        var refused = await Child.WriteAsync(place.Data, 6, Bound);
        if (folder) File.SetUnixFileMode(place.Data, All);
        foreach (var file in Directory.GetFiles(place.Data)) File.SetUnixFileMode(file, ReadFile | UnixFileMode.UserWrite);

        Assert.True(refused.Code == 3, refused.Errors + string.Join('\n', refused.Said));
        Assert.Empty(refused.Acknowledged);
        Assert.All(refused.Troubles, line => Assert.StartsWith($"trouble {StoreTroubleKind.ReadOnly} ", line, StringComparison.Ordinal));
        Assert.Contains(place.Data, refused.Said[^1], StringComparison.Ordinal);
        Assert.Equal(bytes, await File.ReadAllBytesAsync(place.Database));

        var later = await Child.WriteAsync(place.Data, 6);
        Assert.Equal(6, later.Acknowledged.Count());
        Assert.True(later.Acknowledged.Take(3).SequenceEqual(first.Acknowledged, StringComparer.Ordinal));
        Assert.True((await place.SaidAsync()).Length > said.Length);
    }

    [Fact]
    public async Task A_new_folder_where_nothing_may_be_written_is_refused_in_words()
    {
        File.SetUnixFileMode(place.Path, ReadFolder);
        var refused = await Child.WriteAsync(place.Data, 1, Bound);
        File.SetUnixFileMode(place.Path, All);
        Assert.Equal(3, refused.Code);
        Assert.StartsWith($"trouble {StoreTroubleKind.ReadOnly} {place.Data}", Assert.Single(refused.Said), StringComparison.Ordinal);
        Assert.False(Directory.Exists(place.Data));
    }
}
