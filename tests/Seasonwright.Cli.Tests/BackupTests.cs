using Seasonwright.Desk;
using Seasonwright.Desk.Demo;
using Seasonwright.Desk.Seasons;

namespace Seasonwright.Cli.Tests;

/// <summary>A data folder copied into a file and put back, while the workspace runs and when it does not.</summary>
public sealed class BackupTests : IDisposable
{
    private readonly Session session = new();

    /// <summary>Apart from the session, which looks at every file of its own folder before and after.</summary>
    private readonly string place = Directory.CreateTempSubdirectory("seasonwright-data-").FullName;

    public void Dispose()
    {
        session.Dispose();
        Directory.Delete(place, recursive: true);
    }

    [Fact]
    public async Task A_backup_made_while_the_workspace_runs_brings_every_season_back()
    {
        await using (var workspace = await OpenAsync("club"))
        {
            await workspace.AddDemoAsync(workspace.LocalActor, new DateOnly(2027, 7, 5));
            var told = Run("backup --data data/club --out ./copy.db");
            Assert.Equal((0, "Everything in data/club is copied to copy.db.\n"), (told.Exit, told.Output));

            // What comes after the backup is not in it.
            await workspace.RemoveTeamAsync(workspace.LocalActor, Assert.Single(await workspace.SeasonsAsync()).Team);
            Assert.Empty(await workspace.SeasonsAsync());

            var busy = Run("restore ./copy.db --data data/club");
            Assert.Equal(1, busy.Exit);
            Assert.Contains("data/club", busy.Error, StringComparison.Ordinal);
        }

        var restored = Run("restore ./copy.db --data data/club");
        Assert.Equal(0, restored.Exit);
        Assert.StartsWith("data/club holds what copy.db held.\nWhat it held before is kept in data/club/backups/", restored.Output, StringComparison.Ordinal);
        await AssertHoldsTheDemo("club");

        // Into a folder that was not there; nothing was kept, so nothing is said about it.
        var fresh = Run("restore ./copy.db --data data/elsewhere");
        Assert.Equal((0, "data/elsewhere holds what copy.db held.\n"), (fresh.Exit, fresh.Output));
        await AssertHoldsTheDemo("elsewhere");
    }

    [Fact]
    public async Task A_backup_replaces_an_older_one_whole_or_not_at_all()
    {
        await using (var workspace = await OpenAsync("club")) await workspace.AddDemoAsync(workspace.LocalActor, new DateOnly(2027, 7, 5));
        session.Write("copy.db", "an older file", append: false);
        Assert.Equal(2, Run("backup --data data/club --out ./a-folder").Exit);
        Assert.Equal(2, Run("backup --data data/club --out /dev/null").Exit);
        Assert.Equal(2, Run("backup --data data/club --out data/club/seasonwright.db").Exit);
        Assert.Equal(2, Run("backup --data data/club --out ./no-such-folder/copy.db").Exit);
        Assert.Equal(0, Run("backup --data data/club --out ./copy.db").Exit);

        var bytes = await File.ReadAllBytesAsync(session["copy.db"]);
        await File.WriteAllBytesAsync(session["cut.db"], bytes[..(bytes.Length / 2)]);
        var damaged = Run("restore ./cut.db --data data/club");
        Assert.Equal(2, damaged.Exit);
        Assert.Contains("is damaged. Nothing was changed.", damaged.Error, StringComparison.Ordinal);
        await AssertHoldsTheDemo("club");
    }

    private async Task AssertHoldsTheDemo(string folder)
    {
        await using var workspace = await OpenAsync(folder);
        Assert.Equal(DemoBirth.Id, Assert.Single(await workspace.SeasonsAsync()).Id);
    }

    private Task<Workspace> OpenAsync(string folder) => Workspace.OpenAsync(Path.Combine(place, folder), TimeProvider.System);

    private (int Exit, string Output, string Error) Run(string line)
    {
        var answer = session.Run(line.Replace("data/", place + "/", StringComparison.Ordinal));
        return (answer.Exit, answer.Output.Replace(place + "/", "data/", StringComparison.Ordinal), answer.Error.Replace(place + "/", "data/", StringComparison.Ordinal));
    }
}
