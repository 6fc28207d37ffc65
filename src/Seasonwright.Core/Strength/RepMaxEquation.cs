namespace Seasonwright.Core.Strength;

/// <summary>A published equation that estimates a one-repetition maximum (1RM) from a load lifted until no repetition was left.</summary>
/// <remarks>
/// As compiled in LeSuer DA et al. 1997, J Strength Cond Res 11(4):211-213. An equation is about groups of people; how many
/// repetitions somebody has at a share of the maximum differs widely between people and lifts.
/// </remarks>
public sealed record RepMaxEquation
{
    /// <summary>Repetitions that are taken; the equations have poles at 37 and fall apart long before.</summary>
    public const int Most = 15;

    /// <summary>Repetitions above which an estimate is told with a caution; the sources advise 10 or fewer.</summary>
    public const int Dependable = 10;

    private readonly Func<int, double> factor;

    private RepMaxEquation(string name, string author, int year, string formula, Func<int, double> factor) =>
        (Name, Author, Year, Formula, this.factor) = (name, author, year, formula, factor);

    /// <summary>All of them, in the order of their source.</summary>
    public static ValueList<RepMaxEquation> All { get; } =
    [
        new("epley", "Epley", 1985, "w (1 + r / 30)", r => 1 + r / 30d),
        new("brzycki", "Brzycki", 1993, "36 w / (37 - r)", r => 36 / (37d - r)),
        new("brzycki-decimal", "Brzycki", 1993, "w / (1.0278 - 0.0278 r)", r => 1 / (1.0278 - 0.0278 * r)),
        new("lander", "Lander", 1985, "100 w / (101.3 - 2.67123 r)", r => 100 / (101.3 - 2.67123 * r)),
        new("lombardi", "Lombardi", 1989, "w r^0.10", r => Math.Pow(r, 0.10)),
        new("mayhew", "Mayhew et al.", 1992, "100 w / (52.2 + 41.9 exp(-0.055 r))", r => 100 / (52.2 + 41.9 * Math.Exp(-0.055 * r))),
        new("oconner", "O'Conner et al.", 1989, "w (1 + 0.025 r)", r => 1 + 0.025 * r),
        new("wathan", "Wathan", 1994, "100 w / (48.8 + 53.8 exp(-0.075 r))", r => 100 / (48.8 + 53.8 * Math.Exp(-0.075 * r))),
    ];

    /// <summary>The word for scripts: "epley".</summary>
    public string Name { get; }

    public string Author { get; }

    public int Year { get; }

    /// <summary>With w for the load and r for the repetitions.</summary>
    public string Formula { get; }

    public string Citation => $"{Author} {Year}, as compiled in LeSuer DA et al. 1997, J Strength Cond Res 11(4):211-213";

    /// <summary>The equation of a name, in any case; null where there is none.</summary>
    public static RepMaxEquation? Find(string name) => All.FirstOrDefault(equation => string.Equals(equation.Name, name, StringComparison.OrdinalIgnoreCase));

    /// <summary>The estimate in the unit of the load, not rounded. One repetition to failure is the maximum itself, whatever the equation would say of it.</summary>
    /// <param name="load">Above 0, in any unit.</param>
    /// <param name="repetitions">To failure, 1 to <see cref="Most"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">No load, or repetitions outside 1 to <see cref="Most"/>.</exception>
    public double OneRepMax(double load, int repetitions)
    {
        if (!(load > 0)) throw new ArgumentOutOfRangeException(nameof(load), load, "A load is above 0.");
        ArgumentOutOfRangeException.ThrowIfLessThan(repetitions, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(repetitions, Most);
        return repetitions == 1 ? load : load * factor(repetitions);
    }
}
