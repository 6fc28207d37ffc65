using System.Collections.Immutable;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Loads;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rules;

/// <summary>A week as rules see it: what it is for, what it loads, what it stresses.</summary>
internal sealed record PlanWeek(SeasonWeek Week, PhaseRun? Phase, WeekKind? Kind, WeekLoad Load, ImmutableArray<Match> Matches, decimal Availability)
{
    /// <summary>Below this share of training possible a week that nobody named counts as a break. The planning engine's cut; common practice, no source.</summary>
    private const decimal Break = 0.40m;

    private readonly int[] exposures = new int[Enum.GetValues<QualityKind>().Length];

    public int Number => Week.Number;

    public WeekId Id => Week.Id;

    public DaySpan Days => Week.Days;

    /// <summary>The whole week in AU, as it is laid out once it is marked ready, else as it is aimed at; null while neither is known.</summary>
    public decimal? Total => IsReady && Load.LaidOut is { } laidOut ? laidOut.Au : Load.Target?.Au;

    /// <summary>AU of the matches of one of its days; one on several possible days counts on the first.</summary>
    public int MatchAuOn(DateOnly day, Setup setup) => Matches.Where(match => match.Day == day && match.Days!.Value.Last <= Days.Last).Sum(match => setup.MatchLoad.Of(match).Au);

    /// <summary>Marked ready: what is laid out on its days is what will be done.</summary>
    public bool IsReady { get; private init; }

    /// <summary>Some of our sessions are laid out on its days: which they are is known, those that were called off being none.</summary>
    public bool HasOurs { get; private init; }

    /// <summary>On which days the head coach's practices are is known, or that there are none.</summary>
    public bool HasPractices { get; private init; }

    /// <summary>What is trained on each of its days is known.</summary>
    public bool IsLaidOut => HasOurs && HasPractices;

    /// <summary>The week without its matches in AU, never below 0; null while the whole is not known.</summary>
    public decimal? Training => Total is { } total ? Math.Max(0, total - Load.Match.Au) : null;

    public bool IsPreparation => Phase?.Phase.Kind is PhaseKind.GeneralPreparation or PhaseKind.SpecificPreparation or PhaseKind.PreCompetition;

    public bool IsCompetition => Phase?.Phase.Kind is PhaseKind.Competition or PhaseKind.Peak;

    public bool IsTransition => Kind is { } kind ? kind == WeekKind.Transition : Phase?.Phase.Kind == PhaseKind.Transition;

    /// <summary>Days off after the season count as its transition whatever the weeks are called.</summary>
    public bool IsInTransition => IsTransition || IsBreak && Phase?.Phase.Kind == PhaseKind.Transition;

    /// <summary>No team training.</summary>
    public bool IsBreak => Kind is { } kind ? kind == WeekKind.Break : Availability < Break;

    /// <summary>Matches are played and next to nothing is trained.</summary>
    public bool IsLost => !IsBreak && Kind is null or WeekKind.Reduced && Availability < Break;

    /// <summary>Neither break nor transition, nor lost.</summary>
    public bool IsTraining => !IsBreak && !IsTransition && !IsLost;

    /// <summary>Neither adds to a run of building weeks nor ends it.</summary>
    public bool IsHold => Kind is WeekKind.Introductory or WeekKind.ReEntry or WeekKind.Reduced || IsCongested;

    public bool IsCongested => Kind is WeekKind.Congested || Kind is null && Matches.Length > 1;

    public bool IsEasy => Kind is WeekKind.Unloading or WeekKind.Taper;

    /// <summary>What an easier week is held against: introductory, building, overload or competition, with one match at most.</summary>
    public bool IsNormal => IsTraining && !IsEasy && Matches.Length <= 1 && Kind is not (WeekKind.ReEntry or WeekKind.Reduced or WeekKind.Congested);

    /// <summary>Whether any quality has any emphasis in it. Where none has, nobody said: that is not "none".</summary>
    public bool HasEmphasis { get; private init; }

    /// <summary>Exposures of a kind of quality in the week; several qualities of one kind add up.</summary>
    public int Exposures(QualityKind kind) => exposures[(int)kind];

    /// <summary>Exposures of all kinds, prevention and the coach's own aside.</summary>
    public int AllExposures => exposures.Take((int)QualityKind.Prevention).Sum();

    public static PlanWeek Of(Season season, Setup setup, SeasonWeek week, PhaseRun? phase, ImmutableArray<Match> matches, IReadOnlyList<Event> events)
    {
        var levels = setup.Qualities.Select(quality => (quality.Kind, Level: (int)season.EmphasisOf(week.Id, quality.Id))).Where(quality => quality.Level > 0).ToList();
        var made = new PlanWeek(week, phase, season.KindOf(week.Id), WeekLoad.Of(season, setup, week), matches, AvailabilityOf(week, events))
        {
            HasEmphasis = levels.Count > 0,
            IsReady = season.IsReady(week.Id),
            HasOurs = season.SessionsIn(week).Any(session => session.IsOurs),
            HasPractices = season.SessionsIn(week).Any(session => !session.IsOurs) || season.PracticesOf(week.Id) is { Count: 0 },
        };
        foreach (var (kind, level) in levels) made.exposures[(int)kind] += level;
        return made;
    }

    /// <summary>Share of the week on which training is possible, from events that say so for everyone; 1 where none does.</summary>
    private static decimal AvailabilityOf(SeasonWeek week, IReadOnlyList<Event> events)
    {
        var said = events.Where(item => item is { Training: not null, For: null, Part: null } && item.Days.Overlaps(week.Days)).ToList();
        return said.Count == 0 ? 1 : week.Days.Days().Average(day =>
            said.Where(item => item.Days.Contains(day)).Select(item => item.Training!.Value.Value / 100m).DefaultIfEmpty(1m).Min());
    }
}
