using Seasonwright.Desk;
using Seasonwright.Desk.Demo;
using Seasonwright.Desk.Streams;
using Seasonwright.Web.Host;

namespace Seasonwright.Browser.Tests;

/// <summary>
/// The program's own door, opened inside the tests' process, which saves its start: most tests ask for no more. Those that end
/// the program or fill its disk need a <see cref="WorkspaceProcess"/>.
/// </summary>
public sealed class WorkspaceHere : RunningWorkspace
{
    private readonly Workspace workspace;
    private readonly Door door;

    private WorkspaceHere(Workspace workspace, Door door)
        : base(door.Address, workspace.Path) => (this.workspace, this.door) = (workspace, door);

    /// <param name="demo">Whether the demo team comes.</param>
    /// <param name="with">What is made in it before its door opens.</param>
    public static async Task<WorkspaceHere> OpenAsync(bool demo = false, Func<Workspace, Task>? with = null)
    {
        var opened = await Workspace.OpenAsync(Directory.CreateTempSubdirectory("seasonwright-").FullName, new DayClock(Today));
        if (demo) Assert.IsType<Kept>((await opened.AddDemoAsync(opened.LocalActor, opened.Today)).Answer);
        if (with is not null) await with(opened);
        return new WorkspaceHere(opened, Assert.IsType<Door>(await Door.OpenAsync(opened, new StartOptions(Port: 0))));
    }

    public override async ValueTask DisposeAsync()
    {
        await door.DisposeAsync();
        await workspace.DisposeAsync();
        Directory.Delete(Data, recursive: true);
    }
}
