using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Writes a programme for training at home, or changes it.</summary>
public sealed record SetHomeProgramme(HomeProgramme Programme) : SeasonEdit
{
    public override string Describe(Season season, Setup setup) => season.HomeProgramme(Programme.Id) is null
        ? Sentences.Say("did.add-home", Programme.Name)
        : Sentences.Say("did.change-home", Programme.Name);

    internal override void Decide(SeasonDraft draft)
    {
        Check(draft, Programme);
        foreach (var group in Programme.Groups ?? [])
            if (draft.Find(SeasonFacets.Group, group) is null) draft.Refuse("group-unknown", $"group/{group}", group);
        foreach (var workout in Programme.Days.Select(day => day.Workout).OfType<WorkoutId>().Distinct())
            if (draft.Find(SeasonFacets.Workout, workout) is null) draft.Refuse("workout-unknown", $"workout/{workout}", workout);
        draft.Set(SeasonFacets.Home, Programme.Id, Programme);
    }

    internal static void Check(Draft draft, HomeProgramme programme)
    {
        var subject = $"home/{programme.Id}";
        draft.Require(programme.Name, $"{subject}.name", SeasonDraft.LongestName);
        draft.RequirePossible(programme.FirstDay, $"{subject}.firstDay");
        if (programme.Weeks is < 1 or > HomeProgramme.MostWeeks) draft.Refuse("home-weeks", $"{subject}.weeks", programme.Weeks, HomeProgramme.MostWeeks);
        if (programme.Groups is { Count: 0 or > HomeProgramme.MostGroups } || programme.People is { Count: 0 or > HomeProgramme.MostPeople })
            draft.Refuse("home-nobody", $"{subject}.for", HomeProgramme.MostGroups, HomeProgramme.MostPeople);
        if (Repeats(programme.Groups) || Repeats(programme.People) || Repeats(programme.Kit.Equipment) || Repeats(programme.Days.Select(day => day.Day).ToValueList())) draft.Refuse("home-twice", subject);
        if (programme.Days.Count == 0 || programme.Days.Any(day => day.Workout is null && day.Run is null)) draft.Refuse("home-days", $"{subject}.days");
        foreach (var steps in new[] { programme.Kit.Dumbbells, programme.Kit.Kettlebells }.OfType<WeightSteps>()) SetGym.Check(draft, steps, $"{subject}.kit.steps");
        foreach (var day in programme.Days)
        {
            draft.Limit(day.Note, $"{subject}.days.note", SeasonDraft.LongestName);
            if (day.Run is { } run) Check(draft, run, $"{subject}.days.run");
        }
    }

    /// <summary>What a run must be, wherever it is written.</summary>
    internal static void Check(Draft draft, HomeRun run, string subject)
    {
        Within(run.Repetitions, 1, HomeRun.MostRepetitions, "repetitions");
        if (run.Unit == WorkUnit.Seconds) Within(run.Amount, HomeRun.LeastSeconds, HomeRun.MostSeconds, "amount");
        else if (run.Unit == WorkUnit.Metres) Within(run.Amount, HomeRun.LeastMetres, HomeRun.MostMetres, "amount");
        else draft.Refuse("run-unit", $"{subject}.unit");
        // A number out of bounds has been told already.
        if (run.Repetitions is > 0 and <= HomeRun.MostRepetitions && run.Amount is > 0 and <= HomeRun.MostMetres) Within(run.Repetitions * run.Amount, 1, run.Unit == WorkUnit.Seconds ? HomeRun.MostSecondsInAll : HomeRun.MostMetresInAll, "inAll");
        Within(run.Speed.Value, HomeRun.LeastSpeed, HomeRun.MostSpeed, "speed");
        Within(run.Rest, 0, HomeRun.MostRest, "rest");
        Within(run.More, 0, HomeRun.MostMore, "more");

        void Within(int number, int least, int most, string field)
        {
            if (number < least || number > most) draft.Refuse("run-number", $"{subject}.{field}", number, least, most);
        }
    }

    private static bool Repeats<T>(ValueList<T>? list) => list is not null && list.Distinct().Count() != list.Count;
}
