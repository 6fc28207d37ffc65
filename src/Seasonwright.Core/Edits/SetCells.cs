using System.Globalization;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Fills or empties cells of own tracks, as many as one gesture touched.</summary>
public sealed record SetCells(ValueList<TrackCell> Cells) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => Sentences.Say(
        (Cells.All(cell => string.IsNullOrWhiteSpace(cell.Value)), Cells.Count) switch
        {
            (true, 1) => "did.clear-cell",
            (true, _) => "did.clear-cells",
            (_, 1) => "did.set-cell",
            _ => "did.set-cells",
        }, Cells.Count, string.Join(", ", Cells.Select(cell => season.Facts.Find(SeasonFacets.Track, cell.Track)?.Name).Distinct(StringComparer.Ordinal)));

    internal override void Decide(SeasonDraft draft)
    {
        foreach (var cell in Cells)
        {
            var subject = $"track/{cell.Track}";
            if (draft.Find(SeasonFacets.Track, cell.Track) is not { } track) draft.Refuse("track-unknown", subject, cell.Track);
            else if ((track.Grain == TrackGrain.Day ? cell.Place.Day is null : cell.Place.Week is null)) draft.Refuse("cell-grain", subject, track.Name);
            else if (cell.Place.Week is { } week && draft.Before.Week(week) is null) draft.Refuse("week-unknown", $"week/{week}", week);
            else if (cell.Place.Day is { } day && !Frame.PossibleDays.Contains(day)) draft.RequirePossible(day, subject);
            else if (Canonical(track, cell.Value) is not { } value) draft.Refuse("cell-value", subject, track.Name, cell.Value);
            else if (value.Length == 0) draft.Remove(SeasonFacets.TrackCell, new Pair<TrackId, CellPlace>(cell.Track, cell.Place));
            else
            {
                draft.Limit(value, subject, SeasonDraft.LongestText);
                draft.Set(SeasonFacets.TrackCell, new Pair<TrackId, CellPlace>(cell.Track, cell.Place), value);
            }
        }
    }

    /// <summary>The one way a value is written, "" for an empty cell, null where the track cannot hold it.</summary>
    private static string? Canonical(Track track, string? value)
    {
        value = value?.Trim() ?? "";
        if (value.Length == 0) return "";
        return track.Form switch
        {
            TrackForm.Number => decimal.TryParse(value, NumberStyles.Number & ~NumberStyles.AllowThousands, CultureInfo.InvariantCulture, out var number)
                ? (number / 1.0000000000000000000000000000m).ToString(CultureInfo.InvariantCulture) : null,
            TrackForm.Choice => track.Choices?.Contains(value, StringComparer.Ordinal) == true ? value : null,
            TrackForm.Tick => value is "yes" ? value : value is "no" ? "" : null,
            _ => value,
        };
    }
}

/// <summary>One cell of an own track.</summary>
/// <param name="Value">Text as typed; an invariant number; "yes" or "no" for a tick; null or "" empties the cell.</param>
public sealed record TrackCell(TrackId Track, CellPlace Place, string? Value);
