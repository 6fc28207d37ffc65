using Seasonwright.Core.Seasons;

namespace Seasonwright.Web.Squad;

/// <summary>Whether a player is in a group, as ticked and typed.</summary>
/// <param name="To">"" while it goes on.</param>
internal sealed record GroupTick(GroupLine Group, bool IsIn, string From, string To);
