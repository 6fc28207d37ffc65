using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.Calendars;

namespace Seasonwright.Desk.Seasons;

/// <summary>An open season as it is handed out.</summary>
public sealed class HandingOut
{
    private readonly OpenSeason open;
    private readonly long upTo;

    private HandingOut(OpenSeason open, SharedSeason season, long upTo) => (this.open, Season, this.upTo) = (open, season, upTo);

    /// <summary>What others get to see.</summary>
    public SharedSeason Season { get; }

    /// <param name="version">The number of a published version; null for the season as it stands, a draft.</param>
    /// <param name="today">The date a draft bears.</param>
    /// <returns>Null where there is no such version.</returns>
    public static async Task<HandingOut?> OfAsync(OpenSeason open, int? version, bool keyMatches, DateOnly today, CancellationToken cancel = default)
    {
        var state = open.Stream.State;
        var published = version is { } number ? await open.VersionAsync(number, cancel) : null;
        if (version is not null && published is null) return null;
        var edition = published is null ? Edition.Draft(today) : new Edition(published.Publication, DateOnly.FromDateTime(published.Instant.LocalDateTime));
        var season = published?.Season ?? new Season(open.Season.Id, state.Facts);
        var before = version > 1 ? await open.VersionAsync(version.Value - 1, cancel) : null;
        return new(open, new SharedSeason(season, published?.Setup ?? open.Setup, edition, keyMatches) { Since = before is null ? null : (before.Season, TimeOnly.FromDateTime(published!.Instant.LocalDateTime)) }, published?.Entry ?? state.Number);
    }

    /// <summary>How often what a calendar says was changed up to this edition, and the versions before it, which others may hold. Reads both logs, which only a calendar needs.</summary>
    public async Task<CalendarRevisions> RevisionsAsync(CancellationToken cancel = default)
    {
        var steps = await open.Stream.StepsAsync(upTo, cancel);
        var touches = steps.Concat(await open.TeamStream.StepsAsync(open.TeamStream.State.Number, cancel))
            .SelectMany(step => step.Changes).CountBy(change => change.Key).ToDictionary();
        return CalendarRevisions.Counted(place => touches.GetValueOrDefault(place), Versions(steps));
    }

    private List<Season> Versions(IEnumerable<Step> steps)
    {
        var (facts, versions) = (FactSet.Empty, new List<Season>());
        foreach (var step in steps)
        {
            facts = facts.Evolve(step);
            if (step.Changes.Any(change => change.Key.Facet == SeasonFacets.Publication.Name && change.After is not null)) versions.Add(new(open.Season.Id, facts));
        }
        return versions;
    }
}
