[assembly: AssemblyFixture(typeof(Seasonwright.Browser.Tests.UnchangedDemo))]

namespace Seasonwright.Browser.Tests;

/// <summary>A workspace with the demo for all tests that only look: none of them may change a season.</summary>
public sealed class UnchangedDemo : IAsyncLifetime
{
    private WorkspaceProcess? workspace;

    public WorkspaceProcess Workspace => workspace ?? throw new InvalidOperationException("Not started yet.");

    public async ValueTask InitializeAsync() => workspace = await WorkspaceProcess.StartAsync(demo: true);

    public ValueTask DisposeAsync() => workspace?.DisposeAsync() ?? ValueTask.CompletedTask;
}
