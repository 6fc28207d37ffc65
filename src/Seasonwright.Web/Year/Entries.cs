using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents;
using Seasonwright.Documents.Year;

namespace Seasonwright.Web.Year;

/// <summary>
/// What has been entered in figures and words, so that a menu's form can begin with it: by track, then by week (index from 0)
/// or by day, shaped as the form's fields are named.
/// </summary>
internal static class Entries
{
    public static string Of(Season season, Setup setup) => Template.Of(new[]
    {
        ("load", ByWeek(season, week => season.TargetOf(week.Id) is { } load ? new { load = load.PercentOf(setup.ReferenceWeek).Value } : null)),
        ("practices", ByWeek(season, week => season.PracticesOf(week.Id) is { } entered
            ? new { practices = new { count = entered.Count, minutes = entered.Minutes?.Value, rpe = entered.Rpe?.Value } }
            : null)),
    }.Concat(setup.Qualities.Select(quality => (TrackIds.Emphasis(quality.Id),
        ByWeek(season, week => season.EmphasisOf(week.Id, quality.Id) is var level and not Emphasis.None ? new { emphasis = (int)level } : null))))
    .Concat(season.Tracks.Select(track => (TrackIds.Own(track.Id), Cells(season, track.Id)))).ToDictionary(track => track.Item1, track => track.Item2, StringComparer.Ordinal));

    private static Dictionary<string, object> ByWeek(Season season, Func<SeasonWeek, object?> of) => season.Weeks
        .Select(week => (Place: Index(week), Entry: of(week)))
        .Where(week => week.Entry is not null)
        .ToDictionary(week => week.Place, week => week.Entry!, StringComparer.Ordinal);

    private static Dictionary<string, object> Cells(Season season, TrackId track) => season.Facts.All(SeasonFacets.TrackCell)
        .Where(cell => cell.Subject.First == track)
        .Select(cell => (Place: cell.Subject.Second.Day?.Iso() ?? (season.Week(cell.Subject.Second.Week!.Value) is { } week ? Index(week) : null), Entry: new { cells = new { value = cell.Value } }))
        .Where(cell => cell.Place is not null)
        .ToDictionary(cell => cell.Place!, cell => (object)cell.Entry, StringComparer.Ordinal);

    private static string Index(SeasonWeek week) => (week.Number - 1).ToString(System.Globalization.CultureInfo.InvariantCulture);
}
