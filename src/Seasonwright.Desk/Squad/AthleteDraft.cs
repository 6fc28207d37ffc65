using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;

namespace Seasonwright.Desk.Squad;

/// <summary>A player as typed, to be added or changed.</summary>
/// <param name="Id">Null for somebody new.</param>
/// <param name="TrainingYears">Whole years of regular strength training as of today.</param>
/// <param name="Mass">Body mass today; null to tell none.</param>
/// <param name="From">First day in the team's main squad.</param>
/// <param name="To">Last day, still in it; null while it goes on.</param>
/// <param name="Second">Another squad the person is in as well; null for none.</param>
/// <param name="SecondLeads">Weekdays on which that one leads.</param>
/// <param name="IsAnother">Somebody else of the same name is in the squad, and that is meant so.</param>
public sealed record AthleteDraft(
    PersonId? Id, string Family, string Given, string? Number, ValueList<string> Positions, DateOnly? Born, int? TrainingYears, BodyMass? Mass, DateOnly From, DateOnly? To, string? Second, ValueList<DayOfWeek> SecondLeads, bool IsAnother = false)
{
    /// <summary>Longest texts in characters.</summary>
    public const int LongestName = 80, LongestNumber = 8, LongestPosition = 40, LongestSquad = 60;

    /// <summary>Most positions of a person.</summary>
    public const int MostPositions = 6;
}
