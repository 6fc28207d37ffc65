namespace Seasonwright.Core.Seasons;

/// <summary>Part of a day that a session lies in.</summary>
public enum DaySlot
{
    Morning,
    Afternoon,
    Evening,
}

/// <summary>What a slot means on the clock.</summary>
public static class DaySlots
{
    /// <summary>When sessions without a time are taken to begin: 9:00, 14:00 and 18:00. Common practice, no source.</summary>
    public static TimeOnly UsualStart(this DaySlot slot) => slot switch
    {
        DaySlot.Morning => new(9, 0),
        DaySlot.Afternoon => new(14, 0),
        _ => new(18, 0),
    };
}
