namespace Seasonwright.Store.People;

/// <summary>A player of a team as its squad list has them, kept until the squad is set up. A row, never in the log, so that it can be erased; nothing in it tells of health.</summary>
/// <param name="Family">Family name; empty where the list has none.</param>
/// <param name="Given">Given names; empty where the list has none.</param>
/// <param name="Number">Number on the shirt as written.</param>
/// <param name="Position">Positions as written, the first one first, set apart by "/".</param>
/// <param name="Born">Date of birth.</param>
/// <param name="Age">Years, where the list writes an age.</param>
/// <param name="Mass">Body mass as entered, with its unit.</param>
/// <param name="Height">As written, with its unit.</param>
/// <param name="Group">A group the list names.</param>
/// <param name="Remark">What else is said.</param>
/// <param name="LiftsJson">Lifts as entered: a JSON array; "[]" for none.</param>
public sealed record SquadMember(string Family, string Given, string? Number, string? Position, DateOnly? Born, int? Age, string? Mass, string? Height, string? Group, string? Remark, string LiftsJson);
