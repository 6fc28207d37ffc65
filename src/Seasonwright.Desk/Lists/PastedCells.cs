using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Year;

namespace Seasonwright.Desk.Lists;

/// <summary>A block of cells pasted from a spreadsheet onto the year: all of it as edits of one gesture, or why not.</summary>
/// <param name="Edits">In the order of the block; none where every cell holds already what the block says.</param>
/// <param name="Problem">What is wrong, where in the block, and how to mend it; then there are no edits.</param>
public sealed record PastedCells(ValueList<Edit> Edits, string? Problem = null)
{
    /// <summary>
    /// The rows of the block go to the track of the place and the tracks that can be filled below it, as they are shown; on the weeks
    /// themselves the first column names the tracks. Columns are weeks, or days on tracks that go by days. An empty cell empties.
    /// </summary>
    /// <param name="shown">Ids of the drawing's tracks, from top to bottom.</param>
    /// <param name="track">Where it is pasted.</param>
    /// <param name="week">The first column's week, from 0.</param>
    /// <param name="day">The first column's day, where one is chosen.</param>
    public static PastedCells Read(Season season, Setup setup, IReadOnlyList<string> shown, string text, string track, int week, DateOnly? day)
    {
        if (string.IsNullOrWhiteSpace(text)) return Refuse("paste.empty");
        var table = CellTable.OfTabs(SourceText.OfText(Say("paste.name"), text));
        if (table.Problems.Count > 0) return Refuse("paste.problem", table.Problems[0].What, table.Problems[0].Mend);
        var block = table.Rows.ToList();
        while (block.Count > 0 && block[^1].IsBlank) block.RemoveAt(block.Count - 1);

        var lines = CellLine.Of(season, setup, shown);
        var at = lines.FindIndex(line => line.Track == track);
        var isNamed = at < 0;
        if (isNamed && track is not (TrackIds.Weeks or TrackIds.Months or TrackIds.Dates)) return Refuse("paste.not-here", string.Join(", ", lines.Select(known => known.Name)));
        if (isNamed && block[0][0].Length == 0) block.RemoveAt(0);
        if (!isNamed && block.Count > lines.Count - at) return Refuse("paste.rows", block.Count, lines[at].Name, lines.Count - at);

        var edits = new List<Edit>();
        foreach (var (row, number) in block.Select((row, index) => (row, index)))
        {
            var line = isNamed ? lines.Find(line => Spelling.Same(line.Name, row[0])) : lines[at + number];
            if (line is null) return Refuse("paste.name-unknown", number + 1, row[0], string.Join(", ", lines.Select(known => known.Name)));
            if (line.IsByDay && day is null) return Refuse("paste.by-day", line.Name);
            foreach (var (cell, column) in row.Cells.Skip(isNamed ? 1 : 0).Select((cell, column) => (cell, column)))
            {
                if (!line.IsByDay && week + column >= season.Weeks.Length) return Refuse("paste.wide", row.Cells.Count - (isNamed ? 1 : 0), week + 1, season.Weeks.Length - week);
                if (line.IsByDay && season.WeekOf(day!.Value.AddDays(column)) is null) return Refuse("paste.days", line.Name);
                var (edit, isGood) = line.Fill(line.IsByDay ? CellPlace.Of(day!.Value.AddDays(column)) : CellPlace.Of(season.Weeks[week + column].Id), cell.Trim());
                if (!isGood) return Refuse("paste.cell", number + 1, column + 1 + (isNamed ? 1 : 0), cell, line.Name, line.Takes);
                if (edit is not null) edits.Add(edit);
            }
        }
        return new(Joined(edits));

        static PastedCells Refuse(string id, params object?[] words) => new(ValueList<Edit>.Empty, Say(id, words));
    }

    // Cells of own tracks are one edit, so that the history has one line.
    private static ValueList<Edit> Joined(List<Edit> edits)
    {
        var cells = edits.OfType<SetCells>().SelectMany(edit => edit.Cells).ToValueList();
        var others = edits.Where(edit => edit is not SetCells);
        return (cells.Count == 0 ? others : others.Append(new SetCells(cells))).ToValueList();
    }

    private static string Say(string id, params object?[] words) => PasteTexts.Say(id, words);
}

/// <summary>A track that can be filled cell by cell.</summary>
/// <param name="Takes">What its cells may hold, in words.</param>
/// <param name="Fill">The edit that makes a cell hold a text: null where it does already; not good where the track cannot hold it.</param>
internal sealed record CellLine(string Track, string Name, bool IsByDay, string Takes, Func<CellPlace, string, (Edit? Edit, bool IsGood)> Fill)
{
    private const int MostPercent = Percent.Most;

    public static List<CellLine> Of(Season season, Setup setup, IReadOnlyList<string> shown)
    {
        List<CellLine> all =
        [
            new("practices", YearTexts.Say("track.practices"), false, PasteTexts.Say("paste.takes.practices", SetPractices.Most), (place, text) =>
            {
                var week = place.Week!.Value;
                var known = season.PracticesOf(week);
                if (text.Length == 0) return (known is null ? null : new SetPractices(week, week, null), true);
                if (Number(text) is not { } count || count != decimal.Truncate(count) || count is < 0 or > SetPractices.Most) return (null, false);
                return (known?.Count == count ? null : new SetPractices(week, week, (known ?? new Practices(0)) with { Count = (int)count }), true);
            }),
            new("load", YearTexts.Say("track.load"), false, PasteTexts.Say("paste.takes.load", MostPercent), (place, text) =>
            {
                var week = place.Week!.Value;
                var known = season.TargetOf(week)?.PercentOf(setup.ReferenceWeek).Value;
                if (text.Length == 0) return (known is null ? null : new SetWeekLoad(week, week, null), true);
                // 0.92 may be 92 % or a slip: a share is said in per cent.
                if (Number(text.TrimEnd('%', ' ')) is not { } percent || percent is < 0 or > MostPercent || (percent < 3 && percent != decimal.Truncate(percent))) return (null, false);
                var whole = (int)Math.Round(percent, MidpointRounding.AwayFromZero);
                return (known == whole ? null : new SetWeekLoad(week, week, Load.FromPercent(new Percent(whole), setup.ReferenceWeek)), true);
            }),
            .. setup.Qualities.Select(quality => new CellLine(TrackIds.Emphasis(quality.Id), quality.Name, false, PasteTexts.Say("paste.takes.emphasis"), (place, text) =>
            {
                var week = place.Week!.Value;
                if (Emphasised(text) is not { } emphasis) return (null, false);
                return (season.EmphasisOf(week, quality.Id) == emphasis ? null : new SetEmphasis(week, week, quality.Id, emphasis), true);
            })),
            .. season.Tracks.Select(track => new CellLine(TrackIds.Own(track.Id), track.Name, track.Grain == TrackGrain.Day, PasteTexts.Say($"paste.takes.{track.Form}", string.Join(", ", track.Choices ?? ValueList<string>.Empty)), (place, text) =>
                Held(track, text) is not { } value ? (null, false) : ((season.CellOf(track.Id, place) ?? "") == value ? null : new SetCells(new([new TrackCell(track.Id, place, value)])), true))),
        ];
        var order = shown.Select((id, index) => (id, index)).ToDictionary(track => track.id, track => track.index, StringComparer.Ordinal);
        return [.. all.Where(line => order.ContainsKey(line.Track)).OrderBy(line => order[line.Track])];
    }

    /// <summary>The text as the track keeps it; null where it cannot.</summary>
    private static string? Held(Track track, string text) => (track.Form, text) switch
    {
        (_, "") => "",
        (TrackForm.Number, _) => Number(text)?.ToString(CultureInfo.InvariantCulture),
        (TrackForm.Choice, _) => track.Choices?.FirstOrDefault(choice => Spelling.Same(choice, text)),
        (TrackForm.Tick, _) => text.ToLowerInvariant() switch { "x" or "✓" or "✔" or "1" or "yes" or "true" or "y" => "yes", "0" or "no" or "false" or "n" or "-" => "", _ => null },
        _ => text,
    };

    private static Emphasis? Emphasised(string text) => text switch
    {
        "" or "0" => Emphasis.None,
        "1" => Emphasis.Maintain,
        "2" => Emphasis.Develop,
        "3" => Emphasis.Focus,
        _ => Enum.GetValues<Emphasis>().Where(level => Spelling.Same(Sentences.Say($"emphasis.{level}"), text)).Select(level => (Emphasis?)level).FirstOrDefault(),
    };

    /// <summary>A point or a comma before the decimals; no signs between thousands, which would make 1.250 two numbers.</summary>
    private static decimal? Number(string text) =>
        decimal.TryParse(text.Replace(',', '.'), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowTrailingWhite | NumberStyles.AllowLeadingWhite, CultureInfo.InvariantCulture, out var number) ? number : null;
}
