namespace Seasonwright.Documents.Read.Squads;

/// <summary>Whom the lines below a heading name.</summary>
internal enum SquadSection
{
    People,
    Staff,
    Trial,

    /// <summary>Players who are out, whatever for.</summary>
    Absent,
}

/// <summary>What headings inside a squad list say.</summary>
internal static class SquadSections
{
    public static SquadSection Of(string heading) =>
        Availability.IsAbsence(heading) ? SquadSection.Absent : PositionWords.IsStaff(heading) ? SquadSection.Staff : PositionWords.IsTrial(heading) ? SquadSection.Trial : SquadSection.People;
}
