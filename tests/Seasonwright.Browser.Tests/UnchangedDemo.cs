[assembly: AssemblyFixture(typeof(Seasonwright.Browser.Tests.UnchangedDemo))]

namespace Seasonwright.Browser.Tests;

/// <summary>A workspace with the demo for all tests that only look: none of them may change a season.</summary>
public sealed class UnchangedDemo : IAsyncLifetime
{
    private RunningWorkspace? workspace;

    public RunningWorkspace Workspace => workspace ?? throw new InvalidOperationException("Not started yet.");

    public async ValueTask InitializeAsync() => workspace = await WorkspaceHere.OpenAsync(demo: true);

    public ValueTask DisposeAsync() => workspace?.DisposeAsync() ?? ValueTask.CompletedTask;
}
