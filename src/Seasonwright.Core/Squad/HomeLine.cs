namespace Seasonwright.Core.Squad;

/// <summary>One exercise as a player does it at home.</summary>
/// <param name="Work">Instead: in the place of what the others do at home.</param>
/// <param name="UpTo">Repetitions that are not gone beyond, where what is there may be too light and more of them are done until only those in reserve are left; null where they are as written.</param>
public sealed record HomeLine(WorkLine Work, int? UpTo);
