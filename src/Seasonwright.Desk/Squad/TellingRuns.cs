using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Desk.Squad;

/// <summary>Telling how far or fast a player ran in a test.</summary>
public static class TellingRuns
{
    /// <param name="gesture">The test's id: what is sent twice is told once.</param>
    /// <returns><see cref="Kept"/>; why not otherwise, every field that is wrong as the refusal's subject, and then nothing is changed.</returns>
    public static async Task<Answer> TellRunAsync(this Workspace workspace, TeamId team, Guid gesture, PersonId person, DateOnly day, int metres, int seconds)
    {
        var wrong = Problems(day, metres, seconds, workspace.Today).ToValueList();
        if (wrong.Count > 0) return new NotDone(wrong);
        return await Recording.KeepAsync(async () => await workspace.PlayerAsync(team, person) is not null
            && await workspace.Folder.Athletes.AppendAsync(new RunTest(gesture, person, day, metres, seconds, workspace.Clock.GetUtcNow())), "athlete");
    }

    /// <summary>Takes back a test that was told by mistake.</summary>
    public static Task<Answer> TakeBackRunAsync(this Workspace workspace, TeamId team, PersonId person, Guid test) => Recording.KeepAsync(async () =>
    {
        if (await workspace.PlayerAsync(team, person) is not null) await workspace.Folder.Athletes.EraseRunAsync(person, test);
        return true;
    }, "athlete");

    private static IEnumerable<Refusal> Problems(DateOnly day, int metres, int seconds, DateOnly today)
    {
        if (day > today || today.DayNumber - day.DayNumber > TellingLifts.FurthestDays) yield return Refusal.Say("run-test-day", "run-day");
        if (metres is < RunTest.LeastMetres or > RunTest.MostMetres) yield return Refusal.Say("run-test-metres", "run-metres", RunTest.LeastMetres, RunTest.MostMetres);
        if (seconds is < RunTest.LeastSeconds or > RunTest.MostSeconds) yield return Refusal.Say("run-test-time", "run-time", RunTest.LeastSeconds / 60, RunTest.MostSeconds / 60);
        else if (metres is >= RunTest.LeastMetres and <= RunTest.MostMetres && !RunTest.IsSpeed(metres, seconds)) yield return Refusal.Say("run-test-speed", "run-time", decimal.Round((decimal)metres / seconds, 1), RunTest.LeastSpeed, RunTest.MostSpeed);
    }
}
