using System.Collections.Concurrent;
using System.Diagnostics;
using System.Text.RegularExpressions;

namespace Seasonwright.Browser.Tests;

/// <summary>The built program as a person starts it: a process of its own, on a free port, with a data folder that goes with it.</summary>
public sealed partial class WorkspaceProcess : RunningWorkspace
{
    private readonly Process process;
    private readonly ConcurrentQueue<string> said;
    private readonly bool ownsData;

    private WorkspaceProcess(Process process, Uri address, string data, bool ownsData, ConcurrentQueue<string> said)
        : base(address, data) => (this.process, this.ownsData, this.said) = (process, ownsData, said);

    public int Id => process.Id;

    /// <summary>What the program has printed so far, both ways.</summary>
    public string Said => string.Join('\n', said);

    /// <summary>Starts the program and waits until it has printed its address.</summary>
    /// <param name="demo">Whether the demo team comes.</param>
    /// <param name="data">A folder to start on; it is then left behind. Null makes one that goes with the process.</param>
    /// <param name="port">0 takes a free one.</param>
    /// <param name="program">The program's file; null for the one the solution's build left.</param>
    public static async Task<WorkspaceProcess> StartAsync(bool demo = false, string? data = null, int port = 0, string? program = null)
    {
        var folder = data ?? Directory.CreateTempSubdirectory("seasonwright-").FullName;
        string[] options = ["--port", $"{port}", "--data", folder, "--no-browser", "--today", $"{Today:yyyy-MM-dd}"];
        // A file that may not grow is an error to the program, not a signal that ends it: the disk can be filled under it.
        var start = new ProcessStartInfo("sh", ["-c", "trap '' XFSZ; exec dotnet \"$@\"", "sh", program ?? Built, .. options, .. demo ? Array.Empty<string>() : ["--no-demo"]])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        var lines = new ConcurrentQueue<string>();
        var ready = new TaskCompletionSource<Uri>(TaskCreationOptions.RunContinuationsAsynchronously);
        var started = new Process { StartInfo = start, EnableRaisingEvents = true };
        started.OutputDataReceived += (_, line) => Hear(line.Data);
        started.ErrorDataReceived += (_, line) => Hear(line.Data);
        started.Exited += (_, _) => ready.TrySetException(new InvalidOperationException($"The workspace ended before it was ready: {string.Join('\n', lines)}"));
        started.Start();
        started.BeginOutputReadLine();
        started.BeginErrorReadLine();
        return new WorkspaceProcess(started, await ready.Task.WaitAsync(TimeSpan.FromMinutes(2)), folder, data is null, lines);

        void Hear(string? line)
        {
            if (line is null) return;
            lines.Enqueue(line);
            if (AddressPrinted().Match(line) is { Success: true } address) ready.TrySetResult(new Uri(address.Value));
        }
    }

    /// <summary>From now on no file of the program may grow, as on a disk that is full; or they may again.</summary>
    public async Task FillDiskAsync(bool full)
    {
        using var limit = Process.Start("prlimit", ["--pid", $"{Id}", full ? "--fsize=0:unlimited" : "--fsize=unlimited:unlimited"]);
        await limit.WaitForExitAsync();
        if (limit.ExitCode != 0) throw new InvalidOperationException("prlimit refused.");
    }

    /// <summary>Ends the process at once, as a power cut would; the data folder stays until the workspace is disposed.</summary>
    public async Task KillAsync()
    {
        if (!process.HasExited) process.Kill(entireProcessTree: true);
        await process.WaitForExitAsync();
    }

    public override async ValueTask DisposeAsync()
    {
        await KillAsync();
        process.Dispose();
        if (ownsData) Directory.Delete(Data, recursive: true);
    }

    /// <summary>The folder of the solution.</summary>
    public static string Root
    {
        get
        {
            var root = new DirectoryInfo(AppContext.BaseDirectory);
            while (!File.Exists(Path.Combine(root.FullName, "Seasonwright.slnx"))) root = root.Parent ?? throw new InvalidOperationException("The tests run outside the solution's folder.");
            return root.FullName;
        }
    }

    /// <summary>The program as the solution's build left it, in the configuration the tests were built in.</summary>
    private static string Built
    {
        get
        {
            var built = new DirectoryInfo(AppContext.BaseDirectory);
            return Path.Combine(Root, "src", "Seasonwright.Web", "bin", built.Parent!.Name, built.Name, "Seasonwright.Web.dll");
        }
    }

    [GeneratedRegex(@"http://127\.0\.0\.1:\d+", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex AddressPrinted();
}
