using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.Year;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.Workbooks;

/// <summary>
/// A row a week. Days, months, ISO weeks and what has true days of its own follow the first day by formula; phase, block, load,
/// emphasis and practices belong to their week and move with it.
/// </summary>
internal sealed class YearSheet
{
    public const string Name = "Year";

    // More than the page's scale holds.
    private const int MostBlocks = 30;

    private readonly Season season;
    private readonly Setup setup;
    private readonly SheetLooks looks;

    private readonly List<(SheetColumn Column, Func<SeasonWeek, int, Cell> Cell)> columns = [];

    private readonly List<Emphasised> emphasised = [];

    private YearSheet(Season season, Setup setup, WorkbookChoices choices, SheetLooks looks, WeekLists lists)
    {
        (this.season, this.setup, this.looks) = (season, setup, looks);
        Calendar();
        Plan();
        Loads();
        Days(lists);
        foreach (var quality in setup.Qualities)
            Add(quality.Name, 3.2, (week, _) => Count((int)season.EmphasisOf(week.Id, quality.Id)), isUpright: true);
        if (setup.Qualities.Length > 0) Strokes(columns.Count - setup.Qualities.Length, columns.Count - 1);
        foreach (var track in season.Tracks) Own(track);
        if (choices.Notes)
        {
            if (lists.Notes is { Items.Count: > 0 } notes) Add(Say("workbook.notes"), 13, (week, row) => notes.In(week.Days, row));
            Add(Say("workbook.week.note"), 17, (week, _) => Text(season.NoteOf(week.Id), SheetLooks.Wrapped));
        }
    }

    public static Sheet Of(Season season, Setup setup, WorkbookChoices choices, SheetLooks looks, WeekLists lists) => new YearSheet(season, setup, choices, looks, lists).Sheet();

    private Sheet Sheet()
    {
        var last = FormattableString.Invariant($"{Workbooks.Sheet.Letters(columns.Count - 1)}{Workbooks.Sheet.HeadingRow + Math.Max(1, season.Weeks.Length)}");
        // Where a month begins; last, as some spreadsheets let the first look win that fits.
        emphasised.Add(new($"A{Workbooks.Sheet.FirstRow}:{last}", FormattableString.Invariant($"AND(ROW()>{Workbooks.Sheet.FirstRow},MONTH($B{Workbooks.Sheet.FirstRow})<>MONTH($B{Workbooks.Sheet.HeadingRow}))"), LineAbove: Palette.Rule));
        var sheet = new Sheet(Name, [.. columns.Select(column => column.Column)],
            [
                new(null, SheetLooks.Quiet), new(season.Frame.FirstDay, looks.Input), new(null, looks.Input),
                new(Say("workbook.first-day.hint"), SheetLooks.Quiet),
            ],
            [.. season.Weeks.Select((week, index) => (IReadOnlyList<Cell>)[.. columns.Select(column => column.Cell(week, Workbooks.Sheet.FirstRow + index))])],
            Frozen: 3, Merged: FormattableString.Invariant($"B{Workbooks.Sheet.HeadingRow - 1}:C{Workbooks.Sheet.HeadingRow - 1}"), Emphasised: emphasised);
        return sheet with
        {
            Names =
            [
                (Formulas.FirstDay, FormattableString.Invariant($"{Name}!$B${Workbooks.Sheet.HeadingRow - 1}")),
                (Formulas.LastDay, FormattableString.Invariant($"{Name}!$C${sheet.LastRow}")),
                (Formulas.WeekFirst, sheet.Cells(1)),
            ],
        };
    }

    private void Calendar()
    {
        Add(Say("workbook.week"), 5, (week, _) => new(Number(week.Number), SheetLooks.Number with { Side = CellSide.Middle, IsBold = true }));
        Add(Say("workbook.first"), 7.5, (week, row) => new(week.Days.First, looks.Day,
            week.Number == 1 ? Formulas.FirstDay : FormattableString.Invariant($"C{row - 1}+1")));
        Add(Say("workbook.last"), 7.5, (week, row) => new(week.Days.Last, looks.Day,
            week.Number == 1 ? Formulas.EndOfFirstWeek(season.Frame.WeekStart) : FormattableString.Invariant($"B{row}+6")));
        Add(Say("workbook.month"), 8.5, (week, row) => new(new DateOnly(week.Days.First.Year, week.Days.First.Month, 1), SheetLooks.Month,
            FormattableString.Invariant($"DATE(YEAR(B{row}),MONTH(B{row}),1)")));
        Add(Say("workbook.iso"), 4.5, (week, row) => new(Number(week.IsoWeek.Number), SheetLooks.Count, Formulas.IsoWeek($"B{row.ToString(CultureInfo.InvariantCulture)}", $"C{row.ToString(CultureInfo.InvariantCulture)}")));
    }

    private void Plan()
    {
        Add(Say("workbook.phase"), 13.5, (week, _) =>
        {
            if (season.PhaseOf(week) is not { Phase: var phase }) return new(null, SheetLooks.Text);
            var (ground, ink) = PhasesTrack.Looking(phase.Kind);
            return Text(RunWords.Of(phase), SheetLooks.Wrapped with { Fill = ground.Fill, Ink = ink.Fill });
        });
        Add(Say("workbook.block"), 9, (week, _) => season.BlockOf(week) is { Block: var block } ? Text(RunWords.Of(block), SheetLooks.Wrapped) : new(null, SheetLooks.Text));
        Add(Say("workbook.block.week"), 3.5, (week, _) => Count(season.BlockOf(week) is { } run ? week.Number - run.First.Number + 1 : 0), isUpright: true);
        Add(Say("workbook.kind"), 11, (week, _) => Text(season.KindOf(week.Id) is { } kind ? Sentences.Say($"kind.{kind}") : null, SheetLooks.Text));
    }

    private void Loads()
    {
        var column = columns.Count;
        // AU means something once the team said what it usually does.
        var hasAu = setup.Facts.Find(SetupFacets.UsualWeek, default) is not null || setup.Facts.FindValue(SetupFacets.ReferenceWeek, default) is not null;
        var au = Workbooks.Sheet.Letters(column + 2);
        Add(Say("workbook.load"), 7, (week, row) => season.TargetOf(week.Id) is not { } target ? new(null, SheetLooks.Percent)
            : hasAu ? new((decimal)target.Au / setup.ReferenceWeek.Au, SheetLooks.Percent, FormattableString.Invariant($"IF({au}{row}=\"\",\"\",{au}{row}/{AboutSheet.HardWeek})"))
            : new(target.PercentOf(setup.ReferenceWeek).Value / 100m, SheetLooks.Percent));
        var load = Workbooks.Sheet.Letters(column);
        // Blocks of text: a bar that every spreadsheet, printer and reader shows.
        Add(Say("workbook.bar"), 8, (week, row) => season.TargetOf(week.Id) is not { } target ? new(null, SheetLooks.Bar)
            : new(new string('█', (int)Math.Min(MostBlocks, Math.Round((hasAu ? (decimal)target.Au / setup.ReferenceWeek.Au : target.PercentOf(setup.ReferenceWeek).Value / 100m) * 10, MidpointRounding.AwayFromZero))), SheetLooks.Bar,
                FormattableString.Invariant($"REPT(\"█\",MIN({MostBlocks},ROUND(N({load}{row})*10,0)))")));
        if (hasAu) Add(Say("workbook.au"), 6.5, (week, _) => new(season.TargetOf(week.Id) is { } target ? Number(target.Au) : (decimal?)null, SheetLooks.Au));
        Add(Say("workbook.practices"), 3.5, (week, _) => season.PracticesOf(week.Id) is { } practices ? new(Number(practices.Count), SheetLooks.Count with { Format = "0" }) : new(null, SheetLooks.Count), isUpright: true);
        Add(Say("workbook.minutes"), 4, (week, _) => new(season.PracticesOf(week.Id) is { Count: > 0, Minutes: { } minutes } ? Number(minutes.Value) : (decimal?)null, SheetLooks.Count), isUpright: true);
    }

    private void Days(WeekLists lists)
    {
        Add(Say("workbook.matches"), 3.5, (week, row) => new(Number(season.MatchesIn(week).Count(match => !match.IsOff)), SheetLooks.Count, FormattableString.Invariant(
            $"COUNTIFS({lists.Matches.First},\">=\"&B{row},{lists.Matches.First},\"<=\"&C{row})")
            + string.Concat(new[] { MatchStatus.Postponed, MatchStatus.Cancelled }.Select(status => FormattableString.Invariant(
                $"-COUNTIFS({lists.Matches.First},\">=\"&B{row},{lists.Matches.First},\"<=\"&C{row},{MatchesSheet.Status},\"{Sentences.Say($"status.{status}")}\")")))), isUpright: true);
        Add(Say("workbook.against"), 16, (week, row) => lists.Matches.In(week.Days, row));
        Add(Say("workbook.events"), 15, (week, row) => lists.Events.In(week.Days, row));
        Add(Say("workbook.tests"), 12, (week, row) => lists.Tests.In(week.Days, row));
    }

    /// <summary>One blue, heavier as the emphasis is.</summary>
    private void Strokes(int first, int last)
    {
        var cell = FormattableString.Invariant($"{Workbooks.Sheet.Letters(first)}{Workbooks.Sheet.FirstRow}");
        emphasised.Add(new(Cells(first, last), $"{cell}=3", Palette.Specific, Palette.OnSpecific));
        emphasised.Add(new(Cells(first, last), $"{cell}=2", Palette.General, Palette.OnGeneral));
    }

    private void Own(Track track)
    {
        var heading = track is { Form: TrackForm.Number, Unit: { } unit } ? Say("workbook.unit", track.Name, unit) : track.Name;
        if (track.Grain == TrackGrain.Day) Add(heading, 11, (week, row) => DaysSheet.In(season, track, week.Days, row));
        else Add(heading, 10.5, (week, _) => Own(track, season.CellOf(track.Id, CellPlace.Of(week.Id))));
    }

    /// <summary>A number as a number, anything else as it was typed.</summary>
    public static Cell Own(Track track, string? value) => value is null ? new(null, SheetLooks.Text)
        : track.Form == TrackForm.Number && decimal.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? new(number, SheetLooks.Number)
        : Text(track.Form == TrackForm.Tick ? YearTexts.Say("own.tick") : value, SheetLooks.Wrapped);

    private string Cells(int first, int last) => FormattableString.Invariant(
        $"{Workbooks.Sheet.Letters(first)}{Workbooks.Sheet.FirstRow}:{Workbooks.Sheet.Letters(last)}{Workbooks.Sheet.HeadingRow + Math.Max(1, season.Weeks.Length)}");

    private void Add(string heading, double width, Func<SeasonWeek, int, Cell> cell, bool isUpright = false) => columns.Add((new SheetColumn(heading, width, isUpright), cell));

    private static Cell Text(string? text, CellLook look) => new(text, look);

    private static Cell Count(int count) => new(count == 0 ? (decimal?)null : Number(count), SheetLooks.Count);

    private static decimal Number(int number) => number;
}
