using Seasonwright.Core;
using Seasonwright.Core.Squad;

namespace Seasonwright.Documents.Read.Squads;

/// <summary>A person as a squad list has them. What the list does not say, or what must be asked first, is null or empty. Nothing in it tells of health.</summary>
/// <param name="Line">Physical line, of a sheet its row; 1 is the first.</param>
/// <param name="Family">Family name as written.</param>
/// <param name="Given">Given names as written.</param>
/// <param name="Number">Number on the shirt as written, for instance "7", "0", "4/5".</param>
/// <param name="Positions">As written, in the order written.</param>
/// <param name="Born">Date of birth.</param>
/// <param name="Age">Years, where the list writes an age; none is worked out.</param>
/// <param name="Mass">Body mass as entered.</param>
/// <param name="Height">As written with its unit, for instance <c>185 cm</c> or <c>5'9"</c>.</param>
/// <param name="Lifts">In the order of the list.</param>
/// <param name="Group">A group the list names, in a column or as a heading above.</param>
/// <param name="Remark">What else is said and is plain.</param>
/// <param name="Waits">Nothing is kept of the row until its question is answered: a trial player, or a name that stands only among those who are out.</param>
/// <param name="Ask">Ids of the row's open questions.</param>
public sealed record SquadRow(
    int Line, string Family, string Given, string? Number, ValueList<string> Positions, DateOnly? Born, int? Age, EnteredMass? Mass, string? Height,
    ValueList<SquadLift> Lifts, string? Group, string? Remark, bool Waits, ValueList<string> Ask)
{
    /// <summary>"Given Family".</summary>
    public string Name => $"{Given} {Family}".Trim();

    /// <summary>Whether the list tells that the person is under 18 on a day: those have cautions of their own.</summary>
    public bool IsMinorOn(DateOnly day) => Born is { } born ? born > day.AddYears(-Athlete.GrownUp) : Age < Athlete.GrownUp;
}
