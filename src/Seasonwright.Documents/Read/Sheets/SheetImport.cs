using System.Globalization;
using System.Text.RegularExpressions;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.Read.Dates;
using Seasonwright.Documents.Read.Events;
using Seasonwright.Documents.Read.Spans;

namespace Seasonwright.Documents.Read.Sheets;

/// <summary>From a workbook read to the edits that make a season of it. What has no place of its own becomes a track of the coach's.</summary>
/// <param name="Weeks">The ids of the reading's weeks, as many as its grid has.</param>
/// <param name="Reference">The load that 100 per cent is.</param>
/// <param name="Id">An id by kind ("match") and by what makes a thing unique among them.</param>
public sealed record SheetImport(SheetReading Read, ValueList<WeekId> Weeks, Load Reference, Func<string, string, string> Id)
{
    private const int LongestName = 120, LongestText = 2000, MostLoad = 200;

    private WeekGrid Grid => Read.Grid!.Value;

    /// <summary>The edits in the order of the workbook, to be made on a season started with the reading's weeks.</summary>
    /// <exception cref="InvalidOperationException">The reading has no weeks.</exception>
    public IReadOnlyList<SeasonEdit> Edits() => [.. Rows().SelectMany(made => made.Edits), .. Notes()];

    /// <summary>What becomes of each row.</summary>
    /// <exception cref="InvalidOperationException">The reading has no weeks.</exception>
    public IReadOnlyList<RowMade> Rows()
    {
        if (Read.Grid is null) throw new InvalidOperationException("Nothing was read.");
        return [.. Read.Rows.Select((row, place) => new RowMade(row, Of(row, place).ToValueList()))];
    }

    /// <summary>The notes that stand at cells, as notes of their days.</summary>
    public IEnumerable<SeasonEdit> Notes() =>
        Read.Remarks.Where(remark => remark.Days is not null).Select(remark => new SetNote(new(new(Id("note", $"{remark.Sheet}|{remark.Cell}")), remark.Days!.Value, Plain(remark.Text, LongestText))));

    private IEnumerable<SeasonEdit> Of(SheetRow row, int place) => row.Role switch
    {
        RowRole.Matches => row.Matches.Where(match => match.IsWritten).Select((match, i) => Match(match, $"{row.Key}|{match.Cell}|{i}")),
        RowRole.Phases => Phases(row),
        RowRole.Blocks => Blocks(row),
        RowRole.Load when LoadsOf(row) is { } loads => loads.SelectMany(load => WeeksOf(load.Days).Select(week => new SetWeekLoad(week, week, load.Load))),
        RowRole.Emphasis when QualityOf(row) is { } quality => row.Entries.SelectMany(entry => WeeksOf(entry.Days).Select(week => new SetEmphasis(week, week, quality, (Emphasis)Math.Min(3, Exposures.Of(entry.Text) ?? 0)))),
        RowRole.Tests => Tests(row, place),
        RowRole.Events => row.Entries.Select(entry => Event(row, entry)),
        RowRole.Details or RowRole.Leave => [],
        RowRole.Own => Own(row, place),
        _ => Track(row, row.Entries, place),
    };

    private SeasonEdit Match(SheetMatch match, string key)
    {
        var (day, last) = match.Day is { } known ? (known, (DateOnly?)null) : (match.Window.First, match.Window.Length > 1 ? match.Window.Last : null);
        if (match.IsTournament)
            return new SetEvent(new(new(Id("event", key)), EventKind.Tournament, Plain(match.Text, LongestName), new(day, last ?? day), Provisional: match.Day is null, Place: match.Place is { } place ? Plain(place, LongestName) : null));
        // Without a day it is some day of its window; a provisional match has one.
        var status = match is { Day: null, Status: MatchStatus.Provisional or MatchStatus.Confirmed } ? MatchStatus.Window : match.Status;
        return new SetMatch(new(new(Id("match", key)), day, last, match.KickOff, Opponent: Short(match.Opponent), Venue: match.Venue, Competition: Short(match.Competition), Place: Short(match.Place), Importance: match.Importance, Status: status,
            Condition: status == MatchStatus.Conditional ? new Condition(Words: Short(match.Condition)) : null));
    }

    private IEnumerable<SeasonEdit> Phases(SheetRow row)
    {
        var both = Answer("Q-block", row.Key) == "both";
        foreach (var (run, i) in Runs(row))
        {
            yield return new PaintPhase(run.Weeks[0], run.Weeks[^1], new(Id("phase", $"{row.Key}|{i}")), PhaseNames.Of(run.Entry.Text, Read.Rows.SelectMany(other => other.Matches).Any(match => run.Entry.Days.Contains(match.Day ?? match.Window.First))), new(Id("phase-rest", $"{row.Key}|{i}")), Plain(run.Entry.Text, LongestName));
            if (both) yield return new PaintBlock(run.Weeks[0], run.Weeks[^1], new(Id("block", $"{row.Key}|{i}")), BlockKind.Build, new(Id("block-rest", $"{row.Key}|{i}")), Plain(run.Entry.Text, LongestName));
        }
    }

    private IEnumerable<SeasonEdit> Blocks(SheetRow row) => Runs(row).Select(run =>
        new PaintBlock(run.Run.Weeks[0], run.Run.Weeks[^1], new(Id("block", $"{row.Key}|{run.Number}")), BlockKind.Build, new(Id("block-rest", $"{row.Key}|{run.Number}")), Plain(run.Run.Entry.Text, LongestName)));

    private IEnumerable<((SheetEntry Entry, List<WeekId> Weeks) Run, int Number)> Runs(SheetRow row) => row.Entries.Select((entry, i) => ((entry, WeeksOf(entry.Days)), i)).Where(run => run.Item1.Item2.Count > 0);

    // Null where the figures or words are the coach's own until the coach has said what they mean.
    private List<(DaySpan Days, Load Load)>? LoadsOf(SheetRow row)
    {
        var scale = LoadScale.Read(Answer("Q-load", "") ?? "");
        if (row.IsOfTen && Answer("Q-scale", row.Key) != "ten") return null;
        var loads = row.Entries.Where(entry => !Times.TimeText.IsUnknown(entry.Text)).Select(entry => (entry.Days, Share: entry.Number is { } number ? number * (row.IsOfTen ? 10 : entry.Text.EndsWith('%') && number <= 2 ? 100 : 1) : Word(entry.Text))).ToList();
        return loads.Any(load => load.Share is null or < 0 or > MostLoad) ? null : loads.ConvertAll(load => (load.Days, Load.FromPercent(new Percent((int)Math.Round(load.Share!.Value, MidpointRounding.AwayFromZero)), Reference)));

        double? Word(string text) => scale is not null && (scale.TryGetValue(text, out var share) || row.Meanings?.TryGetValue(text, out var meaning) == true && scale.TryGetValue(meaning, out share)) ? share : null;
    }

    private QualityId? QualityOf(SheetRow row)
    {
        if (Answer("Q-sessions", row.Key) == "no" || row.Entries.Any(entry => Exposures.Of(entry.Text) is null)) return null;
        var label = SpanToken.Fold(row.Label);
        return QualityNames.FirstOrDefault(name => name.Words.IsMatch(label)).Id is { } id ? new QualityId(id) : null;
    }

    private static readonly (string Id, Regex Words)[] QualityNames =
    [
        ("hypertrophy", EventWords.Words("hypertrophy|hypertrophie|muscle")), ("power", EventWords.Words("power|explosive|schnellkraft|explosivkraft|plyo\\w*")), ("maximum-strength", EventWords.Words("strength|max strength|maximum strength|kraft|maximalkraft|styrke|styrka|fuerza|force|forza|kracht|gym|weights")),
        ("change-of-direction", EventWords.Words("agility|change of direction|cod")), ("speed", EventWords.Words("speed|sprints?|acceleration|schnelligkeit|vitesse|velocidad")),
        ("high-intensity", EventWords.Words("hiit|intervals?|high intensity")), ("aerobic", EventWords.Words("aerobic|endurance|ausdauer|conditioning|running")), ("prevention", EventWords.Words("prevention|prehab|pravention|mobility")),
    ];

    private IEnumerable<SeasonEdit> Tests(SheetRow row, int place)
    {
        var weekday = Answer("Q-test-day", row.Key) is { } answer ? CalendarWords.Weekday(answer) : null;
        var (placed, rest) = (new List<SeasonEdit>(), new List<SheetEntry>());
        foreach (var entry in row.Entries)
        {
            var doubted = entry.Text.EndsWith('?') ? Answer("Q-tests", $"{row.Key}|{entry.Cell}") : "yes";
            DateOnly? day = entry.Days.Length == 1 ? entry.Days.First : weekday is { } known ? entry.Days.Days().Where(day => day.DayOfWeek == known).Select(day => (DateOnly?)day).FirstOrDefault() : null;
            if (doubted == "no") continue;
            if (doubted == "yes" && day is { } certain) placed.Add(new SetTestDay(new(new(Id("test-day", $"{row.Key}|{entry.Cell}")), certain, Plain(entry.Text.Length > 2 ? entry.Text : row.Label, LongestName))));
            else rest.Add(entry);
        }
        return [.. placed, .. rest.Count > 0 ? Track(row, rest, place) : []];
    }

    private SetEvent Event(SheetRow row, SheetEntry entry)
    {
        var written = DaySpanText.Read(entry.Text, Grid.Span, DayOrder.DayFirst).Days;
        return new SetEvent(new(new(Id("event", $"{row.Key}|{entry.Cell}")), EventWords.Of(entry.Text).Kind, Plain(entry.Text, LongestName), written is { } days && Grid.Span.Overlaps(days) ? days : entry.Days, Provisional: written is null));
    }

    private IEnumerable<SeasonEdit> Own(SheetRow row, int place)
    {
        if (Answer("Q-events", row.Key) != "events") return Track(row, row.Entries, place);
        var events = row.Entries.Where(entry => EventWords.Of(entry.Text).Kind != EventKind.Other).ToList();
        var rest = row.Entries.Except(events).ToList();
        return [.. events.Select(entry => Event(row, entry)), .. rest.Count > 0 ? Track(row, rest, place) : []];
    }

    private IEnumerable<SeasonEdit> Track(SheetRow row, IReadOnlyCollection<SheetEntry> entries, int place)
    {
        if (entries.Count == 0) yield break;
        var track = new TrackId(Id("track", row.Key));
        var (byDay, isNumbers) = (entries.All(entry => entry.Days.Length == 1), entries.All(entry => entry.Number is not null));
        var cells = entries.SelectMany(entry => (byDay ? [CellPlace.Of(entry.Days.First)] : WeeksOf(entry.Days).Select(CellPlace.Of)).Select(at => (At: at, Text: isNumbers ? entry.Number!.Value.ToString("0.####", CultureInfo.InvariantCulture) : entry.Text)))
            .GroupBy(cell => cell.At).Select(cell => new TrackCell(track, cell.Key, isNumbers ? cell.First().Text : Plain(string.Join("; ", cell.Select(entry => entry.Text)), LongestText))).ToValueList();
        yield return new SetTrack(new(track, Plain(row.Label, LongestName), isNumbers ? TrackForm.Number : TrackForm.Text, byDay ? TrackGrain.Day : TrackGrain.Week, Place: place + 1));
        yield return new SetCells(cells);
    }

    private List<WeekId> WeeksOf(DaySpan days) => [.. Enumerable.Range(1, Grid.Count).Where(number => Grid.Week(number) is var week && (days.Contains(week.First) || days.Length < 7 && week.Overlaps(days))).Select(number => Weeks[number - 1])];

    private string? Answer(string kind, string about)
    {
        var key = about.Length == 0 ? kind : $"{kind}:{about}";
        return Read.Answered.FirstOrDefault(answered => answered.Question.Key == key)?.Answer;
    }

    private static string? Short(string? text) => text is null ? null : Plain(text, LongestName);

    // Core takes no control characters.
    private static string Plain(string text, int longest) => Spelling.Cut(string.Concat(Spelling.Tidy(text).Where(c => !char.IsControl(c))), longest);
}

/// <summary>What becomes of a row; nothing where it is left.</summary>
public sealed record RowMade(SheetRow Row, ValueList<SeasonEdit> Edits);

/// <summary>What kind of phase a name says; the name itself is kept.</summary>
internal static class PhaseNames
{
    private static readonly (PhaseKind Kind, Regex Words)[] Names =
    [
        (PhaseKind.Transition, EventWords.Words("transition|off|break|holidays?|summer|ubergang\\w*|pause|ferien|winterpause|exams.*|half-term|rest|recovery|vacances|ferie|uebergang")),
        (PhaseKind.Peak, EventWords.Words("peak\\w*|finals?|play-?offs?|endrunde|taper|championship\\w*")),
        (PhaseKind.SpecificPreparation, EventWords.Words("specific.*|spezi\\w*|vorbereitung (?:ii|2)|preparation (?:ii|2)|prep (?:ii|2)")),
        (PhaseKind.PreCompetition, EventWords.Words("pre-?comp\\w*")),
        (PhaseKind.GeneralPreparation, EventWords.Words("general.*|prep\\w*|pre-?season|vorbereitung.*|off-?season|grundlagen\\w*|forsesong|opkoring|pretemporada|voorbereiding")),
        (PhaseKind.Competition, EventWords.Words("comp\\w*|league.*|season|in-?season|\\w*runde|cup.*|fixtures|liga|saison|sevens|championnat|wettkampf\\w*")),
    ];

    /// <param name="hasMatches">Decides where the name says nothing.</param>
    public static PhaseKind Of(string name, bool hasMatches)
    {
        var folded = SpanToken.Fold(name);
        foreach (var (kind, words) in Names)
            if (words.IsMatch(folded)) return kind;
        return hasMatches ? PhaseKind.Competition : PhaseKind.GeneralPreparation;
    }
}
