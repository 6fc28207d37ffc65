namespace Seasonwright.Browser.Tests;

/// <summary>A workspace that answers at an address, with a data folder of its own.</summary>
public abstract class RunningWorkspace(Uri address, string data) : IAsyncDisposable
{
    /// <summary>The day every started workspace takes for today.</summary>
    public static DateOnly Today { get; } = new(2027, 10, 18);

    public Uri Address => address;

    public string Data => data;

    public abstract ValueTask DisposeAsync();
}
