using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Seasons;

/// <summary>A group that differs from the base plan (a position group, rookies, non-starters). It holds only differences; what it does not say is the base plan's.</summary>
/// <param name="PhaseShift">Weeks its phases run later (+) or earlier (-) than the base plan's.</param>
public sealed record GroupLine(GroupId Id, string Name, int PhaseShift = 0);

/// <summary>How a group differs in one week.</summary>
/// <param name="LoadFactor">Share of the base plan's load; null for the same.</param>
public sealed record GroupWeek(Percent? LoadFactor = null);
