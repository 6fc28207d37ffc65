using Seasonwright.Core;
using Seasonwright.Documents.Read.Squads;

namespace Seasonwright.Desk.Lists;

/// <summary>A player of the kept squad list. What the list does not say is null or empty.</summary>
/// <param name="Position">Positions as written, the first one first, set apart by "/".</param>
/// <param name="Born">Date of birth.</param>
/// <param name="Age">Years, where the list writes an age.</param>
/// <param name="Mass">As entered, with its unit ("71.5 kg").</param>
/// <param name="Height">As written, with its unit.</param>
/// <param name="Lifts">As entered.</param>
public sealed record KeptPlayer(
    string Family, string Given, string? Number, string? Position, DateOnly? Born, int? Age, string? Mass, string? Height, string? Group, string? Remark, ValueList<SquadLift> Lifts);
