using Seasonwright.Core.Loads;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Solver;

namespace Seasonwright.Cli;

/// <summary>A week as <c>week show</c> and <c>week propose</c> tell it. Loads are AU.</summary>
/// <param name="Target">What the week is aimed at; null while nothing is.</param>
/// <param name="Practice">Of its days, entered for the week, or assumed for a proposal; null where nothing is known.</param>
/// <param name="Ours">Of our sessions on its days; null while there are none.</param>
/// <param name="LaidOut">All together; null while the week has none of ours or its practices are not known.</param>
/// <param name="Monotony">Of its days; null where they are not all known, or all alike.</param>
/// <param name="Proposal">How it was laid out; null where it is only shown.</param>
/// <param name="Squad">Null where no list was given.</param>
internal sealed record WeekReport(
    int Week, DateOnly From, DateOnly To, int? Target, int Match, int? Practice, int? Ours, int? LaidOut, decimal? Monotony, IReadOnlyList<WeekDayRow> Days, WeekReport.Found? Proposal, WeekSquad? Squad, Load Hundred)
{
    /// <summary>Of what per cent are shares.</summary>
    [System.Text.Json.Serialization.JsonIgnore]
    public Load Hundred { get; } = Hundred;

    public static WeekReport Of(Season season, Setup setup, SeasonWeek week, IReadOnlyList<Player>? players, WeekProposal? proposal = null, double seconds = 0)
    {
        var load = WeekLoad.Of(season, setup, week);
        var assumed = proposal?.Problem.Given.Where(session => session.IsAssumed).ToList() ?? [];
        var days = DayLoad.Of(season, setup, week).Select((day, index) => WeekDayRow.Of(season, day, assumed.Find(session => session.Day == index))).ToList();
        var practice = assumed.Count > 0 ? assumed.Sum(session => session.Au) : load.Practice?.Au;
        double[] known = [.. days.Where(day => day.PracticeLoad is not null || assumed.Count > 0).Select(day => (double)(day.MatchLoad + (day.PracticeLoad ?? 0) + day.OursLoad))];
        return new WeekReport(week.Number, week.Days.First, week.Days.Last, load.Target?.Au, load.Match.Au, practice, load.Placed?.Au,
            load.Placed is { } placed && practice is { } practised ? load.Match.Au + practised + placed.Au : null,
            known.Length == days.Count && known.Length > 1 && Core.Loads.Monotony.Of(known) is { } monotony ? Math.Round((decimal)monotony, 2) : null,
            days, proposal is null ? null : Found.Of(proposal, seconds), players is null ? null : WeekSquad.Of(season, setup, week, players), setup.ReferenceWeek);
    }

    /// <summary>For people: a row a day, then the week in per cent of the normal hard one.</summary>
    public void Write(Terminal terminal)
    {
        WeekDayRow.Table.Write(Days, terminal.Out);
        terminal.Tell("week.sum", Week, Share(Match), Share(Practice), Share(Ours), Share(LaidOut));
        terminal.Tell("week.against", Share(Target), Monotony is { } monotony ? monotony : Texts.Say("week.unknown"));
    }

    private string Share(int? au) => au is { } known ? new Load(Math.Min(Load.Most, known)).PercentOf(Hundred).ToString() : Texts.Say("week.unknown");

    /// <param name="Cost">What falls short of the wishes, in points of value; no layout costs less than <paramref name="Bound"/>.</param>
    /// <param name="Sessions">Ours, with why each lies where it does.</param>
    /// <param name="Short">What falls short, is assumed, or is asked of practice.</param>
    internal sealed record Found(decimal Cost, decimal Bound, double Gap, bool IsProven, double Seconds, IReadOnlyList<Placed> Sessions, IReadOnlyList<Reason> Short)
    {
        public static Found Of(WeekProposal proposal, double seconds) => new(proposal.Cost / 1000m, proposal.Bound / 1000m, Math.Round(proposal.Gap, 6), proposal.IsProven, Math.Round(seconds, 3),
            [.. proposal.Sessions.Zip(proposal.Reasons, (session, reasons) => new Placed(proposal.Problem.Days[session.Day].Date, System.Text.Json.JsonNamingPolicy.CamelCase.ConvertName(session.Kind.ToString()), [.. reasons.Select(Reason.Of)]))],
            [.. proposal.Short.Select(Reason.Of)]);
    }

    internal sealed record Placed(DateOnly Date, string Kind, IReadOnlyList<Reason> Reasons);

    internal sealed record Reason(string Sentence, string? Rule)
    {
        public static Reason Of(WeekReason reason) => new(reason.Sentence, reason.Rule.Length > 0 ? reason.Rule : null);
    }
}
