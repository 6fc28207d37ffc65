namespace Seasonwright.Core.Seasons;

/// <summary>What is done in sessions of the gym: written once, for a building week in which its quality is developed, and carried over the weeks of a block.</summary>
/// <param name="Quality">What it is for; null for none in particular: the year's emphasis then leaves it as it is.</param>
/// <param name="Cells">Weeks in which an exercise is done otherwise than follows, one cell for an exercise and week.</param>
public sealed record Workout(WorkoutId Id, string Name, ValueList<WorkoutPart> Parts, Progression Progression, QualityId? Quality = null, ValueList<WorkoutCell>? Cells = null)
{
    public const int MostParts = 12, MostItems = 40, MostCells = 2_000;

    public IEnumerable<WorkoutItem> Items => Parts.SelectMany(part => part.Items);

    /// <summary>Where an exercise stands, as cards and pages say it: "A" alone in its part, "B2" in one of several. What gets ready has no place.</summary>
    public string PlaceOf(WorkoutItem item)
    {
        var parts = Parts.Where(part => part.IsWork).ToList();
        var at = parts.FindIndex(part => part.Items.Contains(item));
        if (at < 0) return "";
        var letter = (char)('A' + at);
        return parts[at].Items.Count == 1 ? $"{letter}" : FormattableString.Invariant($"{letter}{parts[at].Items.ToList().IndexOf(item) + 1}");
    }

    /// <summary>What is written for an exercise and a week; null where it follows.</summary>
    public WorkoutCell? Cell(WorkoutItemId item, WeekId week) => Cells?.FirstOrDefault(cell => cell.Item == item && cell.Week == week);
}
