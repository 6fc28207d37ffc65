using System.Collections.Immutable;
using System.Text;

namespace Seasonwright.Documents.Draw;

/// <summary>
/// Every colour of the house, by meaning: the page, the SVG file and the PDF take theirs from here and nowhere else.
/// Which pairs must stay apart is declared in <see cref="Looks"/> and checked by the tests (WCAG 2.2, 1.4.3 and 1.4.11).
/// </summary>
public static class Palette
{
    // Grounds
    public static Tint Paper { get; } = Of("paper", "#fbfaf7", "#12181c", "#ffffff");
    public static Tint Panel { get; } = Of("panel", "#ffffff", "#1a2328", "#ffffff");
    public static Tint Chip { get; } = Of("chip", "#efece4", "#28333a", "#f0f0f0");
    public static Tint TodayGround { get; } = Of("today-ground", "#f4efe3", "#262217", "#eeeeee");
    public static Tint CursorGround { get; } = Of("cursor-ground", "#e6ecea", "#16292c", "#f4f4f4");

    // Ink
    public static Tint Ink { get; } = Of("ink", "#1d2a33", "#e6ecef", "#000000");
    public static Tint Muted { get; } = Of("muted", "#5a666e", "#a3b0b8", "#444444");
    public static Tint Weekend { get; } = Of("weekend", "#7a5f2c", "#d6b676", "#444444");
    public static Tint Hairline { get; } = Of("hairline", "#e4e1d9", "#2b363d", "#d0d0d0");
    public static Tint Rule { get; } = Of("rule", "#7a858b", "#7f8e96", "#707070");
    public static Tint Accent { get; } = Of("accent", "#0f5f63", "#66c2bc", "#222222");
    public static Tint OnAccent { get; } = Of("on-accent", "#ffffff", "#08201f", "#ffffff");
    public static Tint TodayFlag { get; } = Of("today-flag", "#7a5a14", "#d9b45a", "#333333");
    public static Tint OnTodayFlag { get; } = Of("on-today-flag", "#ffffff", "#221a05", "#ffffff");

    // Phases. Pale ones stand out by their edge, not by their fill.
    public static Tint Transition { get; } = Of("transition", "#d8d3c6", "#55534c", "#f0f0f0");
    public static Tint OnTransition { get; } = Of("on-transition", "#1d2a33", "#f4f1ea", "#000000");
    public static Tint TransitionEdge { get; } = Of("transition-edge", "#857e6b", "#a09c90", "#707070");
    public static Tint General { get; } = Of("general", "#a9c6dc", "#8fb4d0", "#d4d4d4");
    public static Tint OnGeneral { get; } = Of("on-general", "#1d2a33", "#0c1a24", "#000000");
    public static Tint GeneralEdge { get; } = Of("general-edge", "#5a86a8", "#b4cfe2", "#707070");
    public static Tint Specific { get; } = Of("specific", "#3f6f99", "#3f6f99", "#636363");
    public static Tint OnSpecific { get; } = Of("on-specific", "#ffffff", "#ffffff", "#ffffff");
    public static Tint SpecificEdge { get; } = Of("specific-edge", "#2f587c", "#78a5cb", "#4a4a4a");
    public static Tint Competition { get; } = Of("competition", "#d98b5f", "#cf8055", "#b4b4b4");
    public static Tint OnCompetition { get; } = Of("on-competition", "#1d2a33", "#1a0f08", "#000000");
    public static Tint CompetitionEdge { get; } = Of("competition-edge", "#a85f35", "#e2a17d", "#606060");
    public static Tint Peak { get; } = Of("peak", "#8a2f4f", "#9c3c5e", "#262626");
    public static Tint OnPeak { get; } = Of("on-peak", "#ffffff", "#ffffff", "#ffffff");
    public static Tint PeakEdge { get; } = Of("peak-edge", "#6d2039", "#d27f9c", "#000000");

    // Matches and events
    public static Tint MatchQuiet { get; } = Of("match-quiet", "#75818a", "#86949c", "#777777");
    public static Tint MatchKey { get; } = Of("match-key", "#8a2f4f", "#e58fac", "#222222");
    public static Tint Event { get; } = Of("event", "#e6e0d0", "#3a3830", "#ececec");
    public static Tint EventEdge { get; } = Of("event-edge", "#857e6b", "#8f8a7b", "#707070");

    // Load
    public static Tint LoadPlanned { get; } = Of("load-planned", "#f1eee6", "#20292e", "#f6f6f6");
    public static Tint LoadDone { get; } = Of("load-done", "#3f6f78", "#6aa3ad", "#5c5c5c");
    public static Tint LoadPractice { get; } = Of("load-practice", "#5f8993", "#568a95", "#8a8a8a");
    public static Tint LoadMatch { get; } = Of("load-match", "#dfe5e3", "#2b383d", "#ffffff");

    // Emphasis: one blue, heavier as the stroke is thicker
    public static Tint Maintain { get; } = Of("maintain", "#3b6d8f", "#7fb0d2", "#555555");
    public static Tint Develop { get; } = Of("develop", "#5687ab", "#5f97bf", "#808080");
    public static Tint Focus { get; } = Of("focus", "#23567d", "#9cc8e6", "#2c2c2c");

    // Findings
    public static Tint CautionGround { get; } = Of("caution-ground", "#fdf6e6", "#2b2412", "#f6f6f6");
    public static Tint CautionEdge { get; } = Of("caution-edge", "#9a6a00", "#d3a545", "#555555");
    public static Tint CautionInk { get; } = Of("caution-ink", "#4e3700", "#f0d79c", "#000000");
    public static Tint StopGround { get; } = Of("stop-ground", "#fdf0ed", "#301915", "#f0f0f0");
    public static Tint StopEdge { get; } = Of("stop-edge", "#a3301f", "#ee8a78", "#000000");
    public static Tint StopInk { get; } = Of("stop-ink", "#6f1c10", "#f8c4b9", "#000000");

    // The rail of rooms at the page's left
    public static Tint Rail { get; } = Of("rail", "#142b31", "#0b1113", "#ffffff");
    public static Tint RailHere { get; } = Of("rail-here", "#1f444b", "#1b3237", "#eeeeee");
    public static Tint RailInk { get; } = Of("rail-ink", "#eef5f4", "#dfe9e8", "#000000");
    public static Tint RailMark { get; } = Of("rail-mark", "#8fd0c8", "#8fd0c8", "#333333");

    /// <summary>All tints, in the order above.</summary>
    public static ImmutableArray<Tint> All { get; } =
    [
        Paper, Panel, Chip, TodayGround, CursorGround,
        Ink, Muted, Weekend, Hairline, Rule, Accent, OnAccent, TodayFlag, OnTodayFlag,
        Transition, OnTransition, TransitionEdge, General, OnGeneral, GeneralEdge, Specific, OnSpecific, SpecificEdge,
        Competition, OnCompetition, CompetitionEdge, Peak, OnPeak, PeakEdge,
        MatchQuiet, MatchKey, Event, EventEdge,
        LoadPlanned, LoadDone, LoadPractice, LoadMatch,
        Maintain, Develop, Focus,
        CautionGround, CautionEdge, CautionInk, StopGround, StopEdge, StopInk,
        Rail, RailHere, RailInk, RailMark,
    ];

    /// <summary>
    /// The palette as CSS custom properties. The reader's system chooses light or dark unless the root element says
    /// <c>data-theme="light"</c> or <c>"dark"</c>; paper is light, or grey with <c>data-print="grey"</c>.
    /// </summary>
    public static string Css()
    {
        var css = new StringBuilder();
        Block(":root", Scheme.Light, "color-scheme:light dark;");
        css.Append("@media (prefers-color-scheme:dark){");
        Block(":root:not([data-theme=\"light\"])", Scheme.Dark, "");
        css.Append("}\n");
        Block(":root[data-theme=\"light\"]", Scheme.Light, "color-scheme:light;");
        Block(":root[data-theme=\"dark\"]", Scheme.Dark, "color-scheme:dark;");
        css.Append("@media print{");
        // Written three times over to outrank any theme above.
        Block(":root:root:root", Scheme.Light, "color-scheme:light;");
        Block(":root:root:root[data-print=\"grey\"]", Scheme.Grey, "");
        css.Append("}\n");
        return css.ToString();

        void Block(string selector, Scheme scheme, string more)
        {
            css.Append(selector).Append('{').Append(more);
            foreach (var tint in All)
                css.Append("--").Append(tint.Name).Append(':').Append(tint.In(scheme)).Append(';');
            css.Append("}\n");
        }
    }

    private static Tint Of(string name, string light, string dark, string grey) =>
        new(name, Rgb.Parse(light), Rgb.Parse(dark), Rgb.Parse(grey));
}
