using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Strength;

namespace Seasonwright.Core.Squad;

/// <summary>What one player does of a session's workout: its exercises or what is done in their place, and the weights.</summary>
/// <param name="Fit">Whether and how the player takes part.</param>
/// <param name="Lines">In the order of the workout; none for who takes no part, or is to be asked first.</param>
/// <param name="IsModified">Something is otherwise than for the others; why is nobody else's business.</param>
/// <param name="IsMinor">Under 18 on the day: nothing is lifted close to a maximum.</param>
public sealed record AthleteWork(PersonId Person, SessionFit Fit, ValueList<WorkLine> Lines, bool IsModified, bool IsMinor)
{
    /// <summary>Repetitions left in what is done in the place of something else: nobody knows its weight yet. Common practice, no source.</summary>
    private const int NewReserve = 3;

    /// <summary>For who is under 18: no set nearer to a maximum. Common practice, no source; local rules and the coach's eye come first.</summary>
    private const int MinorReserve = 2, MinorMost = 85;

    /// <summary>Takes part with something to lift.</summary>
    public bool IsLifting => Lines.Count > 0;

    /// <summary>Modified, and nobody said how.</summary>
    public bool AsksFirst => Fit.Kind == FitKind.ToBeAsked;

    /// <summary>What every player does whose session it is; who is not with the team, or for whom it is not, is left out.</summary>
    /// <returns>In the order of the players; none where nothing is written for the session.</returns>
    public static ValueList<AthleteWork> Of(Season season, Setup setup, Session session, IEnumerable<Player> players, RackLoads loads)
    {
        if (WorkoutWeek.Of(season, session) is not { } workout) return [];
        var exercises = setup.Exercises;
        var atHand = setup.Gym.AtHand.ToHashSet();
        return players.Select(player => Of(player)).OfType<AthleteWork>().ToValueList();

        AthleteWork? Of(Player player)
        {
            var day = PlayerDay.Of(player, season, setup, session.Day);
            if (day.Fits.FirstOrDefault(fit => fit.Session.Id == session.Id) is not { } fit) return null;
            var isMinor = player.Athlete.IsMinorOn(session.Day);
            if (fit.Kind is FitKind.NotAtAll && !IsLeftByExercise(fit, day) || fit.Kind is FitKind.ToBeAsked) return new(player.Id, fit, [], fit.Kind == FitKind.ToBeAsked, isMinor);
            var lines = workout.Parts.SelectMany(part => part.Items.Select(item => Line(item, part.Part, player, day.Standing.Availability.Restrictions, isMinor))).OfType<WorkLine>().ToValueList();
            var isModified = fit.MostMinutes is not null || lines.Count < workout.Items.Count() || lines.Any(line => line.Instead);
            return new(player.Id, fit, lines, isModified, isMinor);
        }

        WorkLine? Line(WrittenItem item, WorkoutPart part, Player player, Restrictions restrictions, bool isMinor)
        {
            if (setup.Exercise(item.Item.Exercise) is not { } written) return null;
            if (Substitutes.For(written, restrictions, atHand, exercises) is not { } done) return null;
            var prescription = done.Id == written.Id ? item.Prescription : item.Prescription with { Effort = part.IsWork && item.Prescription.Unit == WorkUnit.Repetitions ? Effort.Reserve(NewReserve) : Effort.Free };
            if (isMinor) prescription = prescription with { Effort = ForMinor(prescription.Effort) };
            return new(item.Item, part, done, prescription, GivenLoad.Of(prescription, done, player.MaximumOn(session.Day, done, setup)?.Weight, player.BodyMassOn(session.Day), loads), Instead: done.Id != written.Id);
        }
    }

    /// <summary>A kind of session may leave nothing by its kind where single exercises of this workout are left.</summary>
    private static bool IsLeftByExercise(SessionFit fit, PlayerDay day) => day.Standing.Availability.State == AvailabilityState.Modified && fit.Without.Count > 0;

    private static Effort ForMinor(Effort effort) => effort switch
    {
        { Kind: EffortKind.OfMax, Amount: > MinorMost } => effort with { Amount = MinorMost },
        { Kind: EffortKind.Reserve, Amount: < MinorReserve } => effort with { Amount = MinorReserve },
        _ => effort,
    };
}

/// <summary>One exercise as a player does it.</summary>
/// <param name="Part">Of the workout, in which it lies.</param>
/// <param name="Instead">It is done in the place of what is written.</param>
public sealed record WorkLine(WorkoutItem Item, WorkoutPart Part, Exercise Exercise, Prescription Prescription, GivenLoad Load, bool Instead);
