namespace Seasonwright.Core.Seasons;

/// <summary>Which state of a season something shows. Everything that leaves says it, with the team.</summary>
/// <param name="Version">The published version; null for a draft that nobody has published.</param>
/// <param name="Day">When it was published; of a draft, when it was handed out.</param>
public sealed record Edition(Publication? Version, DateOnly Day)
{
    public bool IsDraft => Version is null;

    public static Edition Draft(DateOnly day) => new(null, day);
}
