using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.Year;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.HeadCoach;

/// <summary>
/// What the head coach needs of the plan and nothing else: no units of load, no models, no emphasis. A value in words, from
/// which the page for paper and the page for a browser are made.
/// </summary>
/// <param name="Name">Team and season.</param>
/// <param name="Edition">Which edition, in words.</param>
/// <param name="Span">First to last day.</param>
/// <param name="Wishes">What is asked of practice in the four weeks from a day on.</param>
public sealed record HeadCoachSheet(
    string Name, string Edition, bool IsDraft, string Span, ValueList<string> Goals, ValueList<HeadCoachWish> Wishes, ValueList<HeadCoachWeek> Weeks)
{
    public const int WeeksAhead = 4;

    /// <param name="from">The day that the weeks ahead are counted from: its own week is the first of them.</param>
    public static HeadCoachSheet Of(SharedSeason shared, DateOnly from)
    {
        var (season, setup) = (shared.Season, shared.Setup);
        var words = new YearWords(season, setup);
        return new(
            shared.Name, shared.EditionWords, shared.Edition.IsDraft, season.Days is { } days ? days.Words(setup.Locale) : "",
            season.Goals.Select(goal => PlainText.Clean(GoalWords.Of(goal, setup.Locale))).ToValueList(),
            season.Weeks.Where(week => week.Days.Last >= from).Take(WeeksAhead)
                .Select(week => new HeadCoachWish(week.Number, Short(shared, words, week.Days), season.FeelOf(setup, week), season.PracticeWishOf(week.Id) is { } wish ? PlainText.Clean(wish) : null)).ToValueList(),
            season.Weeks.Select(week => Week(season, shared, week, words)).ToValueList());
    }

    private static HeadCoachWeek Week(Season season, SharedSeason shared, SeasonWeek week, YearWords words) => new(
        week.Number, Short(shared, words, week.Days), season.PhaseOf(week) is { } run && run.First == week ? Phase(run, season) : null, season.FeelOf(shared.Setup, week),
        season.MatchesIn(week).Select(match => MatchLine.Of(match, words)).ToValueList(),
        season.Events.Where(e => e.Days.Overlaps(week.Days)).Select(e => EventLine.Of(e, week, words)).ToValueList(),
        season.TestDays.Where(test => week.Days.Contains(test.Day)).Select(test => PlainText.Clean(Say("sheet.line", words.ShortDay(test.Day), test.Battery))).ToValueList());

    private static HeadCoachPhase Phase(PhaseRun run, Season season) => new(
        PlainText.Clean(run.Phase.Name ?? Sentences.Say($"phase.{run.Phase.Kind}")),
        run.First.Number == run.Last.Number ? Say("head-coach.week", run.First.Number) : Say("head-coach.weeks", run.First.Number, run.Last.Number),
        Say(IsAgain(run, season) ? "head-coach.again" : $"head-coach.phase.{run.Phase.Kind}"), run.Phase.Kind);

    // General preparation once matches were played builds no base: it brings back what a break took.
    private static bool IsAgain(PhaseRun run, Season season) =>
        run.Phase.Kind == PhaseKind.GeneralPreparation && season.Phases.Any(earlier => earlier.Phase.Kind == PhaseKind.Competition && earlier.Last.Number < run.First.Number);

    /// <summary>"11 – 17 Oct", "27 Sep – 3 Oct", "Oct 11 – Oct 17" where the month stands first.</summary>
    private static string Short(SharedSeason shared, YearWords words, DaySpan days) =>
        days.Length == 1 ? words.ShortDate(days.First)
        : days.First.Month == days.Last.Month && shared.Setup.Locale.DateOrder != DateOrder.MonthDayYear ? Say("sheet.span", days.First.Day, words.ShortDate(days.Last))
        : Say("sheet.span", words.ShortDate(days.First), words.ShortDate(days.Last));
}
