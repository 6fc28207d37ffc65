namespace Seasonwright.Core.Strength;

/// <summary>A printed table of the share of the maximum with which so many repetitions to failure are possible.</summary>
/// <remarks>Between rows that are not side by side a straight line is drawn, which is ours: the tables print nothing there.</remarks>
public sealed record RepTable
{
    private readonly ValueList<(int Repetitions, decimal Percent)> rows;

    private RepTable(string name, string citation, ValueList<(int Repetitions, decimal Percent)> rows) => (Name, Citation, this.rows) = (name, citation, rows);

    /// <summary>Rows 1 to 12 and 15; 11, 12 and 15 are from memory.</summary>
    public static RepTable Textbook { get; } = new("textbook",
        "Haff GG, Triplett NT (eds) 2016, Essentials of Strength Training and Conditioning, 4th ed., Human Kinetics, table of %1RM and repetitions allowed",
        [(1, 100), (2, 95), (3, 93), (4, 90), (5, 87), (6, 85), (7, 83), (8, 80), (9, 77), (10, 75), (11, 70), (12, 67), (15, 65)]);

    /// <summary>Rows 1 to 10 and 12; twelve repetitions stand at 70 % here and at 67 % in the textbook.</summary>
    public static RepTable LoadChart { get; } = new("load chart", "NSCA Training Load Chart",
        [(1, 100), (2, 95), (3, 93), (4, 90), (5, 87), (6, 85), (7, 83), (8, 80), (9, 77), (10, 75), (12, 70)]);

    public string Name { get; }

    public string Citation { get; }

    /// <summary>Repetitions of the last row.</summary>
    public int Most => rows[^1].Repetitions;

    /// <summary>Per cent of 1RM, not rounded.</summary>
    /// <param name="repetitions">To failure, 1 to <see cref="Most"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">Repetitions outside the table.</exception>
    public decimal Percent(int repetitions)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(repetitions, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(repetitions, Most);
        var (after, below) = rows.First(row => row.Repetitions >= repetitions);
        if (after == repetitions) return below;
        var (before, above) = rows.Last(row => row.Repetitions < repetitions);
        return above + (below - above) * (repetitions - before) / (after - before);
    }

    /// <summary>Per cent of 1RM for repetitions with some left in reserve: the row of both together. Derived, not a published table; null beyond it.</summary>
    /// <param name="reserve">Repetitions that would still be possible, 0 and more.</param>
    public decimal? Percent(int repetitions, int reserve)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(reserve);
        return repetitions + reserve <= Most ? Percent(repetitions + reserve) : null;
    }

    /// <summary>The maximum in the unit of the load, not rounded.</summary>
    /// <param name="load">Lifted to failure, above 0.</param>
    public decimal OneRepMax(decimal load, int repetitions) => load / Percent(repetitions) * 100;

    /// <summary>The most repetitions whose row is no lower than a per cent of 1RM: 0 above 100. Null below the last row, where more are possible than it says.</summary>
    public int? Repetitions(decimal percent) => percent < rows[^1].Percent ? null : Enumerable.Range(1, Most).LastOrDefault(repetitions => Percent(repetitions) >= percent);
}
