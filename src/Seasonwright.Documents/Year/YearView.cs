using Seasonwright.Core;
using Seasonwright.Core.Rules;

namespace Seasonwright.Documents.Year;

/// <summary>How a person looks at the year. It changes the drawing and never the season.</summary>
public sealed record YearView
{
    /// <summary>px of the whole chart, the gutter with the tracks' names included; at least <see cref="LeastWidth"/> is drawn.</summary>
    public double Width { get; init; } = 1500;

    public YearZoom Zoom { get; init; }

    /// <summary>Number of the first week seen, from 1; all weeks are seen in <see cref="YearZoom.Season"/>.</summary>
    public int FirstWeek { get; init; } = 1;

    /// <summary>How many weeks are seen when not all are; null is 14 by week and 5 by day.</summary>
    public int? Weeks { get; init; }

    /// <summary>The team's date now; null draws no today, as on paper.</summary>
    public DateOnly? Today { get; init; }

    /// <summary>Ids of tracks in the order wished; those not named follow the track they follow by default.</summary>
    public ValueList<string> TrackOrder { get; init; } = [];

    /// <summary>
    /// Ids of tracks not drawn. Without "emphasis", its qualities are not drawn either; "marks" are the padlocks and ticks under the weeks.
    /// </summary>
    public ValueList<string> Hidden { get; init; } = [];

    /// <summary>Ids of tracks drawn as a thin line with their name. Folding "emphasis" folds its qualities away.</summary>
    public ValueList<string> Folded { get; init; } = [];

    /// <summary>What the rulebook found and is to be seen; none while painting, and none on what is handed out.</summary>
    public ValueList<Finding> Findings { get; init; } = [];

    /// <summary>px from 0 to the upper end of the load's scale.</summary>
    public double LoadHeight { get; init; } = 118;

    /// <summary>Whether rows of qualities and of the coach's own are as low as their words let them be, as on small paper.</summary>
    public bool IsTight { get; init; }

    public const double LeastWidth = 320;

    /// <summary>Whether a track is drawn in full.</summary>
    public bool Sees(string track) => !Hides(track) && !Folds(track);

    internal bool Hides(string track) => Hidden.Contains(track, StringComparer.Ordinal);

    internal bool Folds(string track) => Folded.Contains(track, StringComparer.Ordinal);
}
