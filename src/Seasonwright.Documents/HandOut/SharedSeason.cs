using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.HandOut;

/// <summary>A season as others may see it: which edition it is, and whether key matches may be told from others.</summary>
public sealed record SharedSeason(Season Season, Setup Setup, Edition Edition, bool KeyMatches = false)
{
    /// <summary>The season with nothing in it that stays with the staff.</summary>
    public Season Season { get; } = KeyMatches ? Season : Season.WithoutKeyMatches();

    /// <summary>The version before and the hour this one was published: what others had otherwise is marked with it. Null for a first version and for a draft.</summary>
    public (Season Before, TimeOnly At)? Since { get; init; }

    /// <summary>When a session was published otherwise than in the version before, or anew; null for one that is as it was.</summary>
    public TimeOnly? ChangedAt(Session session) => Since is var (before, at) && !session.Equals(before.Session(session.Id)) && before.WeekOf(session.Day) is { } week && before.SessionsIn(week).Any() ? at : null;

    /// <summary>"Harbour Vale 2027-28".</summary>
    public string Name => SeasonName.Of(Season, Setup);

    /// <summary>"Version 3 (after the cup), Mon 11 Oct 2027".</summary>
    public string EditionWords => PlainText.Clean(Edition.Words(Setup.Locale));
}
