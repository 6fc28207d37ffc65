namespace Seasonwright.Solver;

/// <summary>Something asked of a week, with the rule of the rulebook it serves, or none for a planning preference.</summary>
public sealed record WeekCondition(string Name, string Rule = "")
{
    /// <summary>In the coach's words.</summary>
    public string Words => WeekWords.Of(this);
}
