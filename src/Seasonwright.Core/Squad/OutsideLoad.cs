using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Squad;

/// <summary>Load done elsewhere on a day, as it was told: minutes and RPE, or AU.</summary>
public sealed record OutsideLoad
{
    /// <summary>Most of a day: eight hours, and those at the highest effort. More is a slip of the pen. Common practice, no source.</summary>
    public const int MostMinutes = 480, MostAu = 4_800;

    private OutsideLoad(Load perDay, Minutes? minutes, Rpe? rpe) => (PerDay, Minutes, Rpe) = (perDay, minutes, rpe);

    /// <summary>AU of one day.</summary>
    public Load PerDay { get; }

    /// <summary>As told; null where AU were.</summary>
    public Minutes? Minutes { get; }

    /// <summary>As told; null where AU were.</summary>
    public Rpe? Rpe { get; }

    /// <summary>Minutes a day times RPE (<see cref="Load.Of"/>).</summary>
    public static OutsideLoad Of(Minutes minutes, Rpe rpe) => new(Load.Of(minutes, rpe), minutes, rpe);

    public static OutsideLoad Of(Load perDay) => new(perDay, null, null);
}
