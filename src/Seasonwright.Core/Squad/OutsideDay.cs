namespace Seasonwright.Core.Squad;

/// <summary>A day of an absence that is told apart from the others.</summary>
public sealed record OutsideDay(DateOnly Day, OutsideLoad Load);
