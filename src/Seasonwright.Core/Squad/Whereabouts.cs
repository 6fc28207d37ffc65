namespace Seasonwright.Core.Squad;

/// <summary>Where somebody is on a day, as a team sees it.</summary>
public enum Whereabouts
{
    WithTeam,

    /// <summary>Another squad leads on this day: what is trained there is not in the team's plan.</summary>
    OtherSquad,

    /// <summary>An absence holds the day.</summary>
    Absent,

    /// <summary>In no squad of the team on this day.</summary>
    NoMember,
}
