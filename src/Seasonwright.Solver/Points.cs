using Seasonwright.Core.Quantities;

namespace Seasonwright.Solver;

/// <summary>One point is one per cent of the squad's normal hard week. The engine counts in whole points; here, and only here, AU become points and points AU.</summary>
/// <param name="Hundred">AU of the normal hard week, above 0.</param>
public readonly record struct Points(Load Hundred)
{
    /// <summary>AU in points, rounded half away from zero.</summary>
    public int Of(long au) => (int)((200 * au + Hundred.Au) / (2L * Hundred.Au));

    public int Of(Load load) => Of((long)load.Au);

    /// <summary>Points in AU, rounded half away from zero, kept within what a week may hold.</summary>
    public Load ToLoad(long points) => new((int)Math.Clamp((points * Hundred.Au + 50) / 100, 0, Load.Most));
}
