using System.Collections.Immutable;
using Seasonwright.Core;
using static Seasonwright.Documents.Draw.Palette;

namespace Seasonwright.Documents.Draw;

/// <summary>
/// The vocabulary of the drawing: every class a painter may emit, with its colours and the grounds it may stand on.
/// Meaning never hangs on colour alone: shape, fill, dash, hatch and thickness differ as well.
/// </summary>
public static class Looks
{
    // Where tracks are drawn: paper, today's column, the column of the cursor.
    private static readonly ValueList<Tint> Board = [Paper, TodayGround, CursorGround];
    private static readonly ValueList<Tint> Anywhere = [Paper, TodayGround, CursorGround, Panel];
    private static readonly ValueList<Tint> NoMeaning = [];

    // Texts
    public static TextLook Ink { get; } = new(
        "text-ink", [Paper, TodayGround, CursorGround, Panel, Chip, Palette.Event, Palette.LoadPlanned], Palette.Ink);
    public static TextLook Muted { get; } = new("text-muted", [Paper, TodayGround, CursorGround, Panel], Palette.Muted);
    public static TextLook Weekend { get; } = new("text-weekend", Board, Palette.Weekend);
    public static TextLook Accent { get; } = new("text-accent", Anywhere, Palette.Accent);
    public static TextLook OnAccent { get; } = new("text-on-accent", [Palette.Accent], Palette.OnAccent);
    public static TextLook OnTodayFlag { get; } = new("text-on-today-flag", [Palette.TodayFlag], Palette.OnTodayFlag);
    public static TextLook OnTransition { get; } = new("text-on-transition", [Palette.Transition], Palette.OnTransition);
    public static TextLook OnGeneral { get; } = new("text-on-general", [Palette.General], Palette.OnGeneral);
    public static TextLook OnSpecific { get; } = new("text-on-specific", [Palette.Specific], Palette.OnSpecific);
    public static TextLook OnCompetition { get; } = new("text-on-competition", [Palette.Competition], Palette.OnCompetition);
    public static TextLook OnPeak { get; } = new("text-on-peak", [Palette.Peak], Palette.OnPeak);
    public static TextLook Caution { get; } = new("text-caution", [CautionGround, Panel, Paper, TodayGround, CursorGround], CautionInk);
    public static TextLook Stop { get; } = new("text-stop", [StopGround, Panel, Paper, TodayGround, CursorGround], StopInk);
    public static TextLook Rail { get; } = new("text-rail", [Palette.Rail, RailHere], RailInk);

    // Grounds and lines without a meaning of their own
    public static MarkLook Ground { get; } = new("ground", NoMeaning, Paper);
    public static MarkLook TodayColumn { get; } = new("today-column", NoMeaning, TodayGround);
    public static MarkLook CursorColumn { get; } = new("cursor-column", NoMeaning, CursorGround);
    public static MarkLook Hairline { get; } = new("hairline", NoMeaning, null, Palette.Hairline, 1);

    // Lines with a meaning: month ticks and steps, brackets, spans of own tracks
    public static MarkLook Rule { get; } = new("rule", Board, null, Palette.Rule, 1.1);
    public static MarkLook Bracket { get; } = new("bracket", Board, null, Palette.Rule, 1.2);
    public static MarkLook TodayFlag { get; } = new("today-flag", Board, Palette.TodayFlag);
    public static MarkLook TodayLine { get; } = new("today-line", Board, null, Palette.TodayFlag, 1.5);

    // Phases
    public static MarkLook Transition { get; } = new("phase-transition", Board, Palette.Transition, TransitionEdge, 1);
    public static MarkLook General { get; } = new("phase-general", Board, Palette.General, GeneralEdge, 1);
    public static MarkLook Specific { get; } = new("phase-specific", Board, Palette.Specific, SpecificEdge, 1);
    public static MarkLook Competition { get; } = new("phase-competition", Board, Palette.Competition, CompetitionEdge, 1);
    public static MarkLook Peak { get; } = new("phase-peak", Board, Palette.Peak, PeakEdge, 1);

    // Matches: disc home, ring away, diamond key; dashed while unsure
    public static MarkLook MatchHome { get; } = new("match-home", Board, Palette.Ink);
    public static MarkLook MatchAway { get; } = new("match-away", Board, Paper, Palette.Ink, 1.5);
    public static MarkLook MatchHomeQuiet { get; } = new("match-home-quiet", Board, MatchQuiet);
    public static MarkLook MatchAwayQuiet { get; } = new("match-away-quiet", Board, Paper, MatchQuiet, 1.5);
    public static MarkLook MatchKeyHome { get; } = new("match-key-home", Board, MatchKey);
    public static MarkLook MatchKeyAway { get; } = new("match-key-away", Board, Paper, MatchKey, 1.5);
    public static MarkLook MatchUnsure { get; } = new("match-unsure", Board, Paper, Palette.Ink, 1.5, 2);
    public static MarkLook MatchKeyUnsure { get; } = new("match-key-unsure", Board, Paper, MatchKey, 1.5, 2);
    public static MarkLook MatchDay { get; } = new("match-day", Board, null, Palette.Ink, 1.1);
    public static MarkLook MatchDayUnsure { get; } = new("match-day-unsure", Board, null, Palette.Ink, 1.1, 2);

    public static MarkLook Event { get; } = new("event", Board, Palette.Event, EventEdge, 1);
    public static MarkLook EventUnsure { get; } = new("event-unsure", Board, Paper, EventEdge, 1, 2.5);
    public static MarkLook Plate { get; } = new("plate", [Paper, Panel], Palette.Muted);
    public static MarkLook TestDay { get; } = new("test-day", Board, Palette.Accent);

    // Load
    public static MarkLook LoadPlanned { get; } = new("load-planned", Board, Palette.LoadPlanned, Palette.Rule, 1);
    public static MarkLook LoadDone { get; } = new("load-done", [Paper, TodayGround, CursorGround, Panel, Palette.LoadPlanned], Palette.LoadDone);
    public static MarkLook LoadPractice { get; } = new("load-practice", [Panel, Palette.Chip], Palette.LoadPractice);
    public static MarkLook LoadMatchGround { get; } = new("load-match-ground", NoMeaning, Palette.LoadMatch);
    public static MarkLook LoadMatch { get; } = new("load-match", [Palette.LoadMatch, Palette.LoadPlanned], null, Palette.Ink, 1.2);

    // Emphasis
    public static MarkLook Maintain { get; } = new("emphasis-maintain", Board, Palette.Maintain);
    public static MarkLook Develop { get; } = new("emphasis-develop", Board, Palette.Develop);
    public static MarkLook Focus { get; } = new("emphasis-focus", Board, Palette.Focus);

    // A model, not a measurement: a dotted line
    public static MarkLook Preparedness { get; } = new("preparedness", Board, null, Palette.Muted, 1.2, 1.5);

    // Findings: a ring for a caution, a square for a warning, a full octagon for a stop
    public static MarkLook CautionMark { get; } = new("finding-caution", Anywhere, CautionGround, CautionEdge, 1.6);
    public static MarkLook WarningMark { get; } = new("finding-warning", Anywhere, CautionGround, CautionEdge, 2);
    public static MarkLook StopMark { get; } = new("finding-stop", Anywhere, StopEdge, StopEdge, 1.6);

    /// <summary>Every look, in the order above.</summary>
    public static ImmutableArray<Look> All { get; } =
    [
        Ink, Muted, Weekend, Accent, OnAccent, OnTodayFlag, OnTransition, OnGeneral, OnSpecific, OnCompetition, OnPeak,
        Caution, Stop, Rail,
        Ground, TodayColumn, CursorColumn, Hairline,
        Rule, Bracket, TodayFlag, TodayLine,
        Transition, General, Specific, Competition, Peak,
        MatchHome, MatchAway, MatchHomeQuiet, MatchAwayQuiet, MatchKeyHome, MatchKeyAway, MatchUnsure, MatchKeyUnsure,
        MatchDay, MatchDayUnsure, Event, EventUnsure, Plate, TestDay,
        LoadPlanned, LoadDone, LoadPractice, LoadMatchGround, LoadMatch,
        Maintain, Develop, Focus, Preparedness,
        CautionMark, WarningMark, StopMark,
    ];
}
