using System.Diagnostics;
using System.Globalization;

namespace Seasonwright.Bench.Open;

/// <summary>Time by the clock and by the processor; the second hardly minds who else is on the machine.</summary>
internal sealed class Watch
{
    private readonly long start = Stopwatch.GetTimestamp();
    private readonly TimeSpan processor = Environment.CpuUsage.TotalTime;

    /// <returns>"ms processor-ms".</returns>
    public string Lap() => string.Create(CultureInfo.InvariantCulture,
        $"{Stopwatch.GetElapsedTime(start).TotalMilliseconds:0} {(Environment.CpuUsage.TotalTime - processor).TotalMilliseconds:0}");
}
