namespace Seasonwright.Solver;

/// <summary>Something asked of a session's place in a room, with the rule of the rulebook it serves, or none.</summary>
public sealed record RoomCondition(string Name, string Rule = "")
{
    /// <summary>In the coach's words.</summary>
    public string Words => PlanWords.Say($"room.{Name}");
}
