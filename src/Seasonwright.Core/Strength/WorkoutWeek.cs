using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Strength;

/// <summary>A workout as it is done in one week: written figures, the way over the weeks, what the week makes of them, and what the coach wrote instead.</summary>
/// <param name="Week">Null for the workout as it is written.</param>
/// <param name="Parts">Those of which something is left.</param>
public sealed record WorkoutWeek(Workout Workout, SeasonWeek? Week, ValueList<WrittenPart> Parts)
{
    /// <summary>
    /// Per cent of the maximum for each repetition more or less: about what the textbook table gives between 2 and 12 repetitions
    /// (<see cref="RepTable.Textbook"/>), so that effort in repetitions in reserve follows what is in per cent.
    /// </summary>
    private const decimal PercentARepetition = 2.5m;

    /// <summary>
    /// Metres a second for each per cent of the maximum: between the slopes of the published relations for bench press and squat around
    /// 0.5 m/s (<see cref="VelocityRelation"/>: 0.0154 and 0.0176).
    /// </summary>
    private const decimal VelocityAPercent = 0.016m;

    public IEnumerable<WrittenItem> Items => Parts.SelectMany(part => part.Items);

    /// <summary>As it is written, outside any week.</summary>
    public static WorkoutWeek Written(Workout workout) => new(workout, null,
        workout.Parts.Select(part => new WrittenPart(part, part.Items.Select(item => new WrittenItem(item, item.Prescription, IsOwn: false)).ToValueList())).ToValueList());

    /// <summary>In a week of the season, for the how-manieth of its sessions with this workout, from 0.</summary>
    public static WorkoutWeek Of(Season season, Workout workout, SeasonWeek week, int session = 0)
    {
        var steps = workout.Progression.StepsAt(LoadingWeek(season, workout, week), session);
        var scale = WeekScale.Of(season, week, workout.Quality);
        return new(workout, week,
        [
            .. from part in workout.Parts
               let items = part.Items.Select(item => Of(item)).OfType<WrittenItem>().ToValueList()
               where items.Count > 0
               select new WrittenPart(part, items),
        ]);

        WrittenItem? Of(WorkoutItem item) => workout.Cell(item.Id, week.Id) is { } cell
            ? cell.Prescription is { } own ? new(item, own, IsOwn: true) : null
            : new(item, workout.Parts.Any(part => part.IsWork && part.Items.Contains(item)) ? Carried(item.Prescription, workout.Progression, steps, scale) : item.Prescription, IsOwn: false);
    }

    /// <summary>In a week away from the season's, of a home programme for instance: as written, with its way over the weeks alone. Repetitions stay, for at home fewer of them are seldom heavier.</summary>
    /// <param name="week">From 0.</param>
    /// <param name="session">The how-manieth of its week with this workout, from 0.</param>
    public static WorkoutWeek AtHome(Workout workout, int week, int session)
    {
        var steps = workout.Progression.StepsAt(week, session);
        return new(workout, null, workout.Parts.Select(part => new WrittenPart(part,
            part.Items.Select(item => new WrittenItem(item, part.IsWork ? Carried(item.Prescription, workout.Progression with { Repetitions = 0 }, steps, new WeekScale(1, 0)) : item.Prescription, IsOwn: false)).ToValueList())).ToValueList());
    }

    /// <summary>What is done in a session; null where nothing is written for it, or its week lies outside the season.</summary>
    public static WorkoutWeek? Of(Season season, Session session)
    {
        if (session.Workout is not { } id || season.Workout(id) is not { } workout || season.WeekOf(session.Day) is not { } week) return null;
        return Of(season, workout, week, SessionsIn(season, week, id).TakeWhile(other => other.Id != session.Id).Count());
    }

    /// <summary>The sessions of a week in which a workout is done, in their order.</summary>
    public static IEnumerable<Session> SessionsIn(Season season, SeasonWeek week, WorkoutId workout) => season.SessionsIn(week).Where(session => session.Workout == workout && !session.IsCancelled);

    /// <summary>
    /// The how-manieth loading week it is, from 0, of the weeks in which the workout is done: from its first session in the block, or without a block
    /// from its first session. A week that does not load stands where the last one that did stood.
    /// </summary>
    private static int LoadingWeek(Season season, Workout workout, SeasonWeek week)
    {
        var block = season.BlockOf(week);
        var weeks = season.Weeks.Where(other => other.Number <= week.Number && (block is null || other.Number >= block.First.Number))
            .SkipWhile(other => block is null && !SessionsIn(season, other, workout.Id).Any()).ToList();
        if (block is not null && weeks.FindIndex(other => SessionsIn(season, other, workout.Id).Any()) is var first and > 0) weeks.RemoveRange(0, first);
        return Math.Max(0, weeks.Count(other => other == week || IsLoading(other)) - (IsLoading(week) ? 1 : 2));

        // A week that nobody has painted yet is trained like any other.
        bool IsLoading(SeasonWeek other) => season.KindOf(other.Id)?.IsLoading() ?? true;
    }

    private static Prescription Carried(Prescription written, Progression progression, int steps, WeekScale scale)
    {
        var fewer = written.Unit == WorkUnit.Repetitions ? Math.Clamp(steps * progression.Repetitions, written.Amount - Prescription.MostRepetitions, written.Amount - 1) : 0;
        return written with
        {
            Sets = (int)Math.Clamp(decimal.Floor((written.Sets + steps * progression.Sets) * scale.Sets + 0.5m), 1, Prescription.MostSets),
            Amount = written.Amount - fewer,
            Effort = Carried(written.Effort, steps * progression.Percent + scale.Points, fewer),
        };
    }

    /// <param name="points">Per cent of the maximum more.</param>
    /// <param name="fewer">Repetitions fewer in a set, which are lighter by themselves.</param>
    private static Effort Carried(Effort written, decimal points, int fewer)
    {
        if (written.Amount is not { } amount || Effort.BoundsOf(written.Kind) is not { } bounds) return written;
        decimal? now = written.Kind switch
        {
            EffortKind.OfMax => decimal.Floor((amount + points) * 2 + 0.5m) / 2,
            EffortKind.Reserve => decimal.Floor(amount - points / PercentARepetition + fewer + 0.5m),
            EffortKind.Velocity => Math.Round(amount - points * VelocityAPercent, 2, MidpointRounding.AwayFromZero),
            _ => null,
        };
        return now is { } carried ? written with { Amount = Math.Clamp(carried, bounds.Least, bounds.Most) } : written;
    }
}
