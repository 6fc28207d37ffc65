namespace Seasonwright.Solver;

/// <summary>How many weeks before and after those in which something has happened are open to a repair, 0 and more each.</summary>
public readonly record struct Reach(int Before, int After)
{
    /// <summary>As many on either side.</summary>
    public static Reach Around(int weeks) => new(weeks, weeks);

    /// <summary>Whether a week is open for the sake of another, both by number.</summary>
    public bool Opens(int week, int happened) => week >= happened - Before && week <= happened + After;

    public bool IsWithin(Reach other) => Before <= other.Before && After <= other.After;
}
