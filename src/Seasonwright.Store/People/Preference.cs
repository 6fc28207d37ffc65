using Seasonwright.Store.Log;

namespace Seasonwright.Store.People;

/// <summary>One setting of one person: how the page looks to them, never what the season is.</summary>
public sealed record Preference(ClubId Club, string Person, string Key, string Json);
