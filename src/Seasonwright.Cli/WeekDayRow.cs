using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Loads;
using Seasonwright.Core.Seasons;
using Seasonwright.Solver;
using static Seasonwright.Cli.CellText;

namespace Seasonwright.Cli;

/// <summary>A day of a week as <c>week</c> gives it. Loads are AU.</summary>
/// <param name="Label">Where it lies around matches, as MD-2.</param>
/// <param name="PracticeLoad">Null where it is not known which days the practices are on.</param>
internal sealed record WeekDayRow(DateOnly Date, string Label, IReadOnlyList<string> Matches, IReadOnlyList<WeekDayRow.Item> Sessions, int MatchLoad, int? PracticeLoad, int OursLoad)
{
    public static Table<WeekDayRow> Table { get; } = new(
    [
        new("day", row => row.Date.ToString("ddd d MMM", CultureInfo.InvariantCulture)),
        new("md", row => row.Label),
        new("match", row => string.Join("; ", row.Matches)),
        new("practice", row => Words(row, isOurs: false)),
        new("ours", row => Words(row, isOurs: true)),
        new("match AU", row => row.MatchLoad == 0 ? "" : Number(row.MatchLoad), IsNumber: true),
        new("practice AU", row => row.PracticeLoad is null or 0 ? "" : Number(row.PracticeLoad), IsNumber: true),
        new("ours AU", row => row.OursLoad == 0 ? "" : Number(row.OursLoad), IsNumber: true),
    ]);

    /// <param name="assumed">A practice that no day was named for.</param>
    public static WeekDayRow Of(Season season, DayLoad load, WeekSession? assumed) => new(
        load.Day,
        MatchDay.Of(load.Day, season.MatchDays).Label,
        [.. season.Matches.Where(match => match.Day == load.Day && !match.IsOff).Select(match => string.Join(' ', new[] { Time(match.KickOff), match.Opponent ?? Sentences.Say("match.unknown") }.OfType<string>()))],
        [.. season.Sessions.Where(session => session.Day == load.Day).Select(Item.Of), .. assumed is null ? [] : new[] { Item.Of(assumed) }],
        load.Match.Au,
        load.Practice?.Au ?? assumed?.Au,
        load.Ours.Au);

    private static string Words(WeekDayRow row, bool isOurs) => string.Join("; ", row.Sessions.Where(session => session.IsOurs == isOurs).Select(session => session.Words));

    /// <summary>A session of the day.</summary>
    /// <param name="Id">Null for a practice that is assumed.</param>
    internal sealed record Item(string? Id, string Kind, string Name, string Slot, string? Start, int Minutes, decimal Rpe, int Load, bool IsOurs, bool IsCancelled, bool IsAssumed)
    {
        public static Item Of(Session session) => new(session.Id.Text, Camel(session.Kind), SessionWords.Name(session), Sentences.Say($"slot.{session.Slot}"), Time(session.Start),
            session.Minutes.Value, session.Rpe.Value, session.Load.Au, session.IsOurs, session.IsCancelled, false);

        public static Item Of(WeekSession assumed) => new(null, Camel(assumed.Kind), Sentences.Say($"session.{assumed.Kind}"), Sentences.Say($"slot.{assumed.Slot}"), null, assumed.Minutes, assumed.Rpe, assumed.Au, false, false, true);

        /// <summary>"Power 40 min RPE 5, morning".</summary>
        internal string Words => Texts.Say(IsCancelled ? "week.session.cancelled" : IsAssumed ? "week.session.assumed" : "week.session", Name, Minutes, Rpe, Start ?? Slot);

        private static string Camel(SessionKind kind) => System.Text.Json.JsonNamingPolicy.CamelCase.ConvertName(kind.ToString());
    }
}
