namespace Seasonwright.Core.Squad;

/// <summary>Why somebody is not with the team. Illness and injury are none of these: they are availability.</summary>
public enum AbsenceKind
{
    NationalTeam,
    SecondClub,
    School,
    Work,
    Holiday,
    Other,
}
