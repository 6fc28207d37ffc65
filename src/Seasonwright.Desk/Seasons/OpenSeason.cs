using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Desk.Seasons;

/// <summary>A season and its team's setup, open. Pages read <see cref="Season"/> and <see cref="Setup"/> and listen to both streams.</summary>
public sealed class OpenSeason
{
    private Season season;
    private Setup setup;
    private Checked? checkup;

    internal OpenSeason(SeasonId id, OpenStream stream, TeamId team, OpenStream teamStream)
    {
        Stream = stream;
        TeamStream = teamStream;
        season = new Season(id, stream.State.Facts);
        setup = new Setup(team, teamStream.State.Facts);
        stream.Changed += _ => Changed?.Invoke();
        teamStream.Changed += _ => Changed?.Invoke();
    }

    public OpenStream Stream { get; }

    public OpenStream TeamStream { get; }

    /// <summary>Raised after every acknowledged change of the season or the setup.</summary>
    public event Action? Changed;

    /// <summary>The season as it stands; the same object until it changes.</summary>
    public Season Season => ReferenceEquals(season.Facts, Stream.State.Facts) ? season : season = new Season(season.Id, Stream.State.Facts);

    public Setup Setup => ReferenceEquals(setup.Facts, TeamStream.State.Facts) ? setup : setup = new Setup(setup.Id, TeamStream.State.Facts);

    /// <summary>What the rulebook says to the season as it stands.</summary>
    public Checkup Checkup
    {
        get
        {
            var (now, team) = (Season, Setup);
            if (checkup is not { } known || !ReferenceEquals(known.Season, now) || !ReferenceEquals(known.Setup, team)) checkup = known = new Checked(now, team, Rulebook.Check(now, team));
            return known.Checkup;
        }
    }

    /// <summary>The published version staff see, with the season it held; null before the first.</summary>
    public async Task<PublishedSeason?> PublishedAsync(CancellationToken cancel = default) =>
        Season.LastPublication is { } last ? await VersionAsync(last.Number, cancel) : null;

    /// <summary>A version by its number, with the season it held; null when there is none.</summary>
    public async Task<PublishedSeason?> VersionAsync(int number, CancellationToken cancel = default)
    {
        var version = new VersionNumber(number);
        if (Season.Facts.Find(SeasonFacets.Publication, version) is not { } publication) return null;
        // The entry, not its gesture: a gesture may publish and go on.
        if (await Stream.FilledAsync(SeasonFacets.Publication.Of(version), cancel) is not { } filled) return null;
        return new PublishedSeason(publication, filled.Number, filled.Instant,
            new Season(season.Id, await Stream.FactsAtAsync(filled.Number, cancel)), new Setup(setup.Id, await TeamStream.FactsOnAsync(filled.Instant, cancel)));
    }

    /// <summary>What differs from the published version, in dates and names; from nothing when none is published.</summary>
    public static IReadOnlyList<string> Draft(Season now, Setup setup, PublishedSeason? published) =>
        published is null ? [] : WhatChanged.Between(published.Season, now, setup);
}

/// <summary>What the rulebook said, and to which season by which figures.</summary>
internal sealed record Checked(Season Season, Setup Setup, Checkup Checkup);

/// <summary>A published version: its number and name, the log entry that made it and when, and the season and its team's setup as they were then.</summary>
public sealed record PublishedSeason(Publication Publication, long Entry, DateTimeOffset Instant, Season Season, Setup Setup);
