using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Desk.Squad;

/// <summary>Telling what a player lifted in a test.</summary>
public static class TellingLifts
{
    /// <summary>Days back that a test may lie: a list of old ones is of some years.</summary>
    public const int FurthestDays = 3_660;

    /// <param name="gesture">The set's id: what is sent twice is told once.</param>
    /// <returns><see cref="Kept"/>; why not otherwise, every field that is wrong as the refusal's subject, and then nothing is changed.</returns>
    public static async Task<Answer> TellLiftAsync(this Workspace workspace, Setup setup, Guid gesture, PersonId person, LiftDraft draft)
    {
        var wrong = ValueList<Refusal>.Empty;
        var answer = await Recording.KeepAsync(async () =>
        {
            if (await workspace.PlayerAsync(setup.Id, person) is not { } player) return false;
            var exercise = draft.Exercise is { } id ? setup.Exercise(id) : null;
            var weight = exercise is null ? null : WeightOf(draft, exercise, player);
            wrong = Problems(draft, exercise, weight, player, setup, workspace.Today).ToValueList();
            return wrong.Count > 0 || await workspace.Folder.Athletes.AppendAsync(new LiftTest(gesture, person, exercise!.Id, draft.Day, weight!, draft.Repetitions, draft.Velocity, workspace.Clock.GetUtcNow()));
        }, "athlete");
        return wrong.Count > 0 ? new NotDone(wrong) : answer;
    }

    /// <summary>Takes back a set that was told by mistake.</summary>
    public static Task<Answer> TakeBackLiftAsync(this Workspace workspace, TeamId team, PersonId person, Guid test) => Recording.KeepAsync(async () =>
    {
        if (await workspace.PlayerAsync(team, person) is not null) await workspace.Folder.Athletes.EraseLiftAsync(person, test);
        return true;
    }, "athlete");

    private static IEnumerable<Refusal> Problems(LiftDraft draft, Exercise? exercise, Weight? weight, Player player, Setup setup, DateOnly today)
    {
        if (exercise is not { HasMax: true }) yield return Refusal.Say("lift-exercise", "exercise");
        else if (exercise.Load == LoadedBy.OnTheBody && draft.Amount >= 0 && MassOn(player, draft.Day) is null) yield return Refusal.Say("lift-body-mass", "weight", exercise.Name);
        else if (weight is null) yield return Refusal.Say("lift-weight", "weight", Weight.Most);
        if (draft.Day > today || today.DayNumber - draft.Day.DayNumber > FurthestDays) yield return Refusal.Say("lift-day", "day");
        if (draft is { Repetitions: null, Velocity: null } or { Repetitions: < 1 or > LiftTest.MostRepetitions }) yield return Refusal.Say("lift-repetitions", "repetitions", LiftTest.MostRepetitions);
        else if (YoungLifts.IsYoung(player.Athlete, draft.Day, setup) && YoungLifts.IsTooNear(draft.Repetitions))
            yield return Refusal.Say("lift-young", "repetitions", YoungLifts.Age(setup).ToString("0.#", CultureInfo.InvariantCulture), YoungLifts.Least, YoungLifts.Most);
        if (draft.Velocity is <= 0 or > LiftTest.MostVelocity) yield return Refusal.Say("lift-velocity", "velocity", LiftTest.MostVelocity);
    }

    /// <summary>As it is counted for the exercise; null where there is no such weight, or the body is lifted and its mass is not known.</summary>
    private static Weight? WeightOf(LiftDraft draft, Exercise exercise, Player player)
    {
        var amount = exercise.Load != LoadedBy.OnTheBody ? draft.Amount : draft.Amount < 0 ? null : draft.Amount + In(draft.Unit, MassOn(player, draft.Day));
        return amount is { } known && Weight.IsPossible(known, draft.Unit) ? new Weight(known, draft.Unit) : null;

        static decimal? In(MassUnit unit, BodyMass? mass) => unit == MassUnit.Pound && mass is { Kilograms: var kilograms } ? Math.Round(kilograms / Weight.KilogramsInPound, 3) : mass?.Kilograms;
    }

    /// <summary>The mass that held on the day, else the first one weighed after it.</summary>
    private static BodyMass? MassOn(Player player, DateOnly day) => (WeighIn.LastOn(player.Weighings, day) ?? (player.Weighings is [var first, ..] ? first : null))?.Mass;
}
