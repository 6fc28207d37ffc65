using System.ComponentModel;
using System.Diagnostics;

namespace Seasonwright.Web.Host;

/// <summary>The desktop around the program, where there is one.</summary>
internal static class Desktop
{
    /// <summary>Opens an address in the person's browser; does nothing without a desktop, for the address has been printed.</summary>
    public static void Open(Uri address)
    {
        if (OperatingSystem.IsLinux() && Environment.GetEnvironmentVariable("DISPLAY") is null && Environment.GetEnvironmentVariable("WAYLAND_DISPLAY") is null) return;
        try
        {
            Process.Start(new ProcessStartInfo(address.AbsoluteUri) { UseShellExecute = true })?.Dispose();
        }
        catch (Exception fault) when (fault is Win32Exception or PlatformNotSupportedException or FileNotFoundException)
        {
            // No program here opens addresses.
        }
    }
}
