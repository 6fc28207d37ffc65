namespace Seasonwright.Store.Tests;

/// <summary>Runs the writer under strace, to see what it asks of the system or to have the system refuse.</summary>
internal static class Tracer
{
    /// <param name="options">Further options of strace.</param>
    public static async Task<Child.Ending> WriteAsync(string folder, int gestures, string log, params string[] options)
    {
        Child.Ending ending;
        try
        {
            ending = await Child.WriteAsync(folder, gestures, ["strace", "-f", "-y", "-s", "16", "-o", log, .. options]);
        }
        catch (System.ComponentModel.Win32Exception missing)
        {
            throw new InvalidOperationException("This test needs strace, which is not on this machine. Run ./test --install.", missing);
        }
        if (ending.Errors.Contains("Operation not permitted", StringComparison.Ordinal) || ending.Errors.Contains("ptrace", StringComparison.OrdinalIgnoreCase))
            throw new InvalidOperationException($"This test needs the right to trace a process, which this machine or container refuses (give it CAP_SYS_PTRACE). strace said: {ending.Errors}");
        return ending;
    }
}
