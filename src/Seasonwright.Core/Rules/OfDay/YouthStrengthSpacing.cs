using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;

namespace Seasonwright.Core.Rules.OfDay;

/// <summary>Strength sessions per week for athletes under 16 or in their first year.</summary>
internal static class YouthStrengthSpacing
{
    public static readonly Figure MaxWeek = Figure.Number("max_week", 3, FigureUnit.Count);
    public static readonly Figure MinGapH = Figure.Number("min_gap_h", 48, FigureUnit.Hours);
    public static readonly Figure MinReps = Figure.Number("min_reps", 6, FigureUnit.Count);
    public static readonly Figure AgeUnder = Figure.Number("age_under", 16, FigureUnit.Count);

    public static Rule Rule { get; } = new("youth-strength-spacing")
    {
        Scope = RuleScope.Day,
        Highest = Severity.Caution,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Faigenbaum2009, Sources.YouthResistanceConsensus],
        Figures = [MaxWeek, MinGapH, MinReps, AgeUnder],
        Needs = Needs.Exercises,
        LooksAtPlayers = Looks,
        IsForYouth = true,
    };

    private static IEnumerable<Look> Looks(SquadPlan squad, Figures figures) =>
        from week in squad.Weeks
        from player in squad.Players
        from look in Looks(squad, player, week, figures)
        select look;

    private static IEnumerable<Look> Looks(SquadPlan squad, Player player, PlanWeek week, Figures figures)
    {
        var place = Place.Of(player, week);
        if (IsConcerned(player.Athlete, week.Days.First, figures) is not { } concerned) yield return new TooLittle(place, "missing.age");
        else if (concerned)
        {
            var (isFound, most, gap) = (false, figures.Number(MaxWeek), figures.Number(MinGapH));
            var sessions = Between(squad, player, week.Days.First.AddDays(-(int)Math.Ceiling(gap / 24) - 1), week.Days.Last).ToList();
            var inWeek = sessions.Count(session => week.Days.Contains(session.Day));
            if (inWeek > most)
            {
                isFound = true;
                yield return new Breach(place, "many", Severity.Caution, inWeek, most) { Figure = MaxWeek.Name, Numbers = [player.Athlete.Name, inWeek, most] };
            }
            foreach (var (first, second) in sessions.Zip(sessions.Skip(1)).Where(pair => week.Days.Contains(pair.Second.Day)))
            {
                if (HoursApart.Of(first, second) is var hours && hours.Count >= gap && second.Day > first.Day.AddDays(1)) continue;
                isFound = true;
                yield return new Breach(place, "close", Severity.Caution, Math.Min(hours.Count, gap), gap) { Figure = MinGapH.Name, Numbers = [player.Athlete.Name, new NamedSession(second), hours, first.Day, gap] };
            }
            if (!isFound) yield return week.HasOurs ? new Fine(place) : new TooLittle(place, "missing.sessions");
        }
    }

    /// <summary>Under the age, or in the first year of strength training; null where neither is known to hold and one is not known.</summary>
    private static bool? IsConcerned(Athlete athlete, DateOnly day, Figures figures)
    {
        bool? isYoung = athlete.AgeOn(day) is { } age ? age < figures.Number(AgeUnder) : null, isNew = athlete.Training is { } training ? training.YearsOn(day) == 0 : null;
        return isYoung | isNew;
    }

    /// <summary>What is left of strength sessions after restrictions, and what is done instead of others, by day and start. Power work and prevention are none.</summary>
    private static IEnumerable<Session> Between(SquadPlan squad, Player player, DateOnly first, DateOnly last)
    {
        for (var day = first; day <= last; day = day.AddDays(1))
            foreach (var fit in squad.DayOf(player, day).Fits)
                if (fit.Kind != FitKind.NotAtAll && (fit.Instead ?? fit.Session.Kind) is SessionKind.LowerStrength or SessionKind.SmallDose or SessionKind.UpperStrength or SessionKind.Hypertrophy)
                    yield return fit.Instead is { } kind ? fit.Session with { Kind = kind, Name = null } : fit.Session;
    }
}
