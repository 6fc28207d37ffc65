namespace Seasonwright.Solver;

/// <summary>
/// How much work the minutes of a session hold, so that its load and its dose are one thing. Common practice, no source: maximum
/// strength rests three minutes and more, a sprint a minute for every ten metres.
/// </summary>
/// <param name="Ready">Minutes to warm up and set up.</param>
/// <param name="Each">Minutes of one portion with its rest: a set, ten contacts, ten metres, or a minute.</param>
/// <param name="Most">Portions of a session.</param>
/// <param name="Easy">Of a session in an easier week.</param>
/// <param name="Near">Of a session within three days before a match, or in a week of two matches.</param>
/// <param name="Back">Of a session in a first week back after two weeks off.</param>
internal sealed record SessionWork(int Ready, int Each, int Most, int Easy, int Near, int Back)
{
    private const int NearDays = 3;

    public int In(int minutes) => Math.Max(0, minutes - Ready) / Each;

    /// <summary>The longest that a session's own work is on a day, what it carries aside.</summary>
    public int MinutesOn(WeekProblem problem, WeekDay day) => Ready + Each * (MostOn(problem, day) + 1) - 1;

    public int MostOn(WeekProblem problem, WeekDay day) => new[]
    {
        Most,
        problem.IsEasy ? Easy : Most,
        day.ToNext <= NearDays || problem.Matches > 1 ? Near : Most,
        problem.IsBack ? Back : Most,
    }.Min();
}
