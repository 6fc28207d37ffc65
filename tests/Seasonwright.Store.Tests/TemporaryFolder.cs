namespace Seasonwright.Store.Tests;

/// <summary>A place on the disk that goes when the test ends.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("seasonwright-").FullName;

    public string Data => In("data");

    public string Database => In("data/seasonwright.db");

    public string In(string name) => System.IO.Path.Combine(Path, name);

    public Task<DataFolder> OpenAsync(string name = "data") => DataFolder.OpenAsync(In(name), TimeProvider.System);

    /// <summary>A folder with a team, a season and some entries in each, closed again.</summary>
    public async Task FillAsync(int gestures = 5)
    {
        using var folder = await OpenAsync();
        await folder.Log.AppendAsync(Sample.Birth());
        for (var number = 1; number <= gestures; number++)
            await folder.Log.AppendAsync(Sample.Request(Sample.To(Sample.Season, number, $"edit {number}")));
    }

    /// <summary>What stands in the log of a folder, as text, opened as a workspace would.</summary>
    public async Task<string> SaidAsync(string name = "data")
    {
        using var folder = await OpenAsync(name);
        return await Sample.Said(folder);
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
