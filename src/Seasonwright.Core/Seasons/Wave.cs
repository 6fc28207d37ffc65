namespace Seasonwright.Core.Seasons;

/// <summary>Part of the squad that begins a session at a time of its own: an early group and the main one.</summary>
/// <param name="Group">Who; null where the name says it.</param>
public sealed record Wave(string Name, TimeOnly Start, GroupId? Group = null);
