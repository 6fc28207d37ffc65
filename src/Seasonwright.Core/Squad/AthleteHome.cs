using Seasonwright.Core.Calendar;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Strength;

namespace Seasonwright.Core.Squad;

/// <summary>What one player does in a home programme: what the home has in the place of what it lacks, weights where they are known, runs by the own test.</summary>
/// <param name="AsksFirst">Out on one of its days, or modified and nobody said how: a clinician is asked first, and no work is told.</param>
/// <param name="IsModified">Something is otherwise than for the others; why is nobody else's business.</param>
/// <param name="IsMinor">Under 18 on one of its days: nothing is lifted close to a maximum.</param>
/// <param name="MostMinutes">Of training a day; null for no cap.</param>
/// <param name="Test">Of which the runs are made; null where there is none.</param>
/// <param name="Days">All of them, the earliest first; none for who asks first.</param>
public sealed record AthleteHome(HomeProgramme Programme, PersonId Person, bool AsksFirst, bool IsModified, bool IsMinor, Minutes? MostMinutes, RunTest? Test, ValueList<AthleteHomeDay> Days)
{
    /// <summary>Nobody stands by at home: so many repetitions are left in every set at least, and with its weight so many are possible. Who is under 18 keeps to <see cref="AthleteWork"/> as well. Common practice, no source.</summary>
    private const int LeastReserve = 2, LeastPossible = 5;

    /// <summary>Repetitions to leave where nobody can tell how hard a set is, and the most of a set that has too little weight. Common practice, no source.</summary>
    private const int UsualReserve = 3, MostRepetitions = 20;

    /// <summary>The days of a week of the programme, from 1.</summary>
    public IEnumerable<AthleteHomeDay> In(int week) => Days.Where(day => day.Week == week);

    /// <summary>Whether a programme is for somebody: of the team's main squad on one of its days, and named or of one of its groups. While nobody told who is in which group, it is for all.</summary>
    public static bool IsFor(HomeProgramme programme, Player player, Season season, TeamId team)
    {
        var span = programme.Span();
        if (!player.Memberships.Any(one => one.Team == team && one.Squad is null && one.Days.Overlaps(span))) return false;
        if (programme.IsForAll || programme.People?.Contains(player.Id) == true) return true;
        if (programme.Groups is not { } groups) return false;
        return !player.Grouped.Contains(season.Id) || player.Groups.Any(place => place.Season == season.Id && groups.Contains(place.Group) && new DaySpan(place.From, place.To ?? DateOnly.MaxValue).Overlaps(span));
    }

    /// <summary>Exercises of its workouts for which a home has nothing that comes near, each once: they are left out for everybody.</summary>
    public static ValueList<Exercise> LeftOut(HomeProgramme programme, Season season, Setup setup)
    {
        var (atHand, exercises) = (programme.Kit.AtHand.ToHashSet(), setup.Exercises);
        return programme.Days.Select(day => day.Workout).OfType<WorkoutId>().Distinct().Select(season.Workout).OfType<Workout>().SelectMany(workout => workout.Items)
            .Select(item => setup.Exercise(item.Exercise)).OfType<Exercise>().Distinct().Where(exercise => Substitutes.For(exercise, Restrictions.None, atHand, exercises) is null).ToValueList();
    }

    public static AthleteHome Of(HomeProgramme programme, Season season, Setup setup, Player player)
    {
        var kit = programme.Kit.AtHand.ToHashSet();
        var loads = RackLoads.Of(new Gym([], programme.Kit.Dumbbells, programme.Kit.Kettlebells, null, programme.Kit.Equipment)).NeverAbove;
        var days = programme.Span().Days().ToList();
        var isMinor = days.Exists(player.Athlete.IsMinorOn);
        var standings = days.Where(day => !IsAway(day)).Select(player.StandingOn).Select(standing => standing.Availability).Distinct().ToList();
        var test = RunTest.On(programme.FirstDay, player.Runs);
        var most = standings.Min(one => one.Restrictions.MostMinutes?.Value);
        if (standings.Exists(one => one.State == AvailabilityState.Out || one is { State: AvailabilityState.Modified, Restrictions.IsNone: true }))
            return new(programme, player.Id, true, true, isMinor, most is { } cap ? new(cap) : null, test, []);
        var done = days.Select((day, at) => Done(day, at / 7)).ToValueList();
        var isOtherwise = most is not null || done.Any(day => day.Run?.Instead == true || day.Lines.Any(line => line.Work.Instead)) || Left(done) < Left(days.Select((day, at) => Done(day, at / 7, Restrictions.None)));
        return new(programme, player.Id, false, isOtherwise, isMinor, most is { } minutes ? new(minutes) : null, test, done);

        // With somebody else then; who is on holiday trains at home.
        bool IsAway(DateOnly day) => player.Absences.Any(absence => absence.Kind is AbsenceKind.NationalTeam or AbsenceKind.SecondClub && absence.Days.Contains(day)) || !player.Memberships.Any(one => one.Team == setup.Id && one.Contains(day));

        static int Left(IEnumerable<AthleteHomeDay> all) => all.Sum(day => day.Lines.Count + (day.Run is null ? 0 : 1));

        AthleteHomeDay Done(DateOnly day, int week, Restrictions? without = null)
        {
            var planned = programme.On(day.DayOfWeek);
            if (planned is null || IsAway(day)) return new(day, week + 1, planned, planned is not null, [], null);
            var restrictions = without ?? player.StandingOn(day).Availability.Restrictions;
            var workout = planned.Workout is { } id ? season.Workout(id) : null;
            return new(day, week + 1, planned, false, workout is null ? [] : Lines(WorkoutWeek.AtHome(workout, week, Earlier(planned, workout.Id)), restrictions, day), planned.Run is { } run ? Ran(run.In(week), restrictions) : null);
        }

        // The how-manieth day of the week with this workout, from 0.
        int Earlier(HomeDay planned, WorkoutId workout) => programme.Span().Days().Take(7).TakeWhile(day => day.DayOfWeek != planned.Day).Count(day => programme.On(day.DayOfWeek)?.Workout == workout);

        ValueList<HomeLine> Lines(WorkoutWeek workout, Restrictions restrictions, DateOnly day)
        {
            var usual = AthleteWork.Done(workout, Restrictions.None, kit, setup).ToDictionary(line => line.Item.Id, line => line.Exercise.Id);
            return AthleteWork.Done(workout, restrictions, kit, setup).Select(line => Weighed(line with { Instead = usual.GetValueOrDefault(line.Item.Id) != line.Exercise.Id }, day)).ToValueList();
        }

        HomeLine Weighed(WorkLine line, DateOnly day)
        {
            var (maximum, body) = (player.MaximumOn(day, line.Exercise, setup)?.Weight, player.BodyMassOn(day));
            // A weight for everyone says nothing of who was never tested: alone, it is told by what is left.
            var written = maximum is null && line.Exercise.HasMax && line.Prescription is { Unit: WorkUnit.Repetitions, Effort.Kind: EffortKind.Fixed or EffortKind.OfBodyMass or EffortKind.Velocity }
                ? line.Prescription with { Effort = Effort.Reserve(UsualReserve) } : line.Prescription;
            var kept = AthleteWork.Kept(written, made => Load(made).Target, LeastReserve, LeastPossible);
            if (isMinor) kept = AthleteWork.ForMinor(kept, made => Load(made).Target);
            var load = Load(kept);
            var isHeld = line.Exercise.Load is LoadedBy.OneDumbbell or LoadedBy.TwoDumbbells or LoadedBy.Kettlebell;
            if (isHeld && load.Made is { } made)
                return new(line with { Prescription = kept, Load = load }, made.Weight.Kilograms < NearEnough * load.Target!.Kilograms && kept.Unit == WorkUnit.Repetitions ? More(kept) : null);
            var felt = Felt(kept, line.Exercise);
            // Where nothing as light is there, what is there is heavy enough.
            var isTooLight = felt.Kind == EffortKind.Reserve && (isHeld && load.Target is null || line.Exercise.Load == LoadedBy.Nothing);
            return new(line with { Prescription = kept with { Effort = felt }, Load = GivenLoad.Unknown with { Reserve = felt.Amount is { } left ? (int)left : null } }, isTooLight ? More(kept) : null);

            GivenLoad Load(Prescription prescription) => GivenLoad.Of(prescription, line.Exercise, maximum, body, loads);
        }

        AthleteRun? Ran(HomeRun written, Restrictions restrictions)
        {
            var run = isMinor ? written.AtMost(AthleteRun.MinorSpeed) : written;
            return AthleteRun.Choose(run, restrictions, kit, setup) is { } mine ? AthleteRun.Of(run, mine, test?.Speed, AthleteRun.Choose(run, Restrictions.None, kit, setup)?.Id != mine.Id) : null;
        }
    }

    /// <summary>A weight that comes so near to its target stands for it.</summary>
    private const decimal NearEnough = 0.85m;

    private static int More(Prescription prescription) => Math.Max(prescription.Amount, MostRepetitions);

    /// <summary>How hard a set should feel, where no weight tells: by repetitions in reserve where it is counted in them and was written with an effort.</summary>
    private static Effort Felt(Prescription prescription, Exercise exercise) =>
        prescription.Unit != WorkUnit.Repetitions || prescription.Effort.Kind == EffortKind.Free || exercise.Pattern is MovementPattern.Jump or MovementPattern.Throw or MovementPattern.FastLift ? Effort.Free
        : Effort.Reserve(Math.Clamp(GivenLoad.ReserveOf(prescription, exercise) ?? UsualReserve, LeastReserve, Effort.BoundsOf(EffortKind.Reserve)!.Value.Most));
}
