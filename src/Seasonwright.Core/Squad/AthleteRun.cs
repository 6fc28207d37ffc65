using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Squad;

/// <summary>A run as one player does it.</summary>
/// <param name="Run">As it is written for the week.</param>
/// <param name="Exercise">What is done: a run, or what is done in its place.</param>
/// <param name="Metres">Of each repetition, to 10 m, below 400 m to 5 m; null where nobody can tell.</param>
/// <param name="Seconds">Of each repetition; null where nobody can tell.</param>
/// <param name="IsOwnSpeed">Both follow from the player's own test; else how hard it feels is what counts.</param>
/// <param name="Instead">It is done in the place of what the others do.</param>
public sealed record AthleteRun(HomeRun Run, Exercise Exercise, int? Metres, int? Seconds, bool IsOwnSpeed, bool Instead)
{
    private const int Far = 400, FarStep = 10, NearStep = 5;

    /// <summary>Per cent of the own speed, and so of effort, that what stands for a run has at most: what was ruled out must not come back under another name. A walk is easy. Common practice, no source.</summary>
    private const int InsteadSpeed = 90, WalkSpeed = 70;

    /// <summary>Nobody under 18 is sent out alone faster than the speed of the own test. Common practice, no source.</summary>
    internal const int MinorSpeed = 100;

    /// <summary>What is asked of whoever runs: what is faster than the own speed is a fast run.</summary>
    public static ExerciseId ExerciseOf(HomeRun run) => new(run.Speed.Value > 100 ? "short-intervals" : run.IsSteady ? "easy-run" : "long-intervals");

    /// <summary>What stands for a run where there is no room for it, or a restriction rules it out, the nearest first. Common practice, no source.</summary>
    private static string[] MachinesFor(HomeRun run) => run.IsSteady ? ["easy-bike", "easy-row", "water-run", "easy-arm-bike"] : ["bike-intervals", "row-intervals", "water-run", "arm-bike-intervals"];

    /// <summary>The run itself where it may be done, else one of what stands for it, else the nearest exercise; null where nothing is left.</summary>
    public static Exercise? Choose(HomeRun run, Restrictions restrictions, IReadOnlySet<Equipment> atHand, Setup setup)
    {
        if (setup.Exercise(ExerciseOf(run)) is not { } written) return null;
        return MachinesFor(run).Select(id => setup.Exercise(new(id))).OfType<Exercise>().Prepend(written).FirstOrDefault(one => Substitutes.For(one, restrictions, atHand, []) is not null)
            ?? Substitutes.For(written, restrictions, atHand, setup.Exercises);
    }

    /// <param name="done">What is done, which is a run or something else.</param>
    /// <param name="speed">The player's own, metres a second; null where no test tells.</param>
    public static AthleteRun Of(HomeRun run, Exercise done, decimal? speed, bool instead)
    {
        var isRun = done.Id == ExerciseOf(run);
        if (!isRun) run = run.AtMost(MachinesFor(run).Contains(done.Id.Text, StringComparer.Ordinal) || ExerciseOf(run.AtMost(MinorSpeed)) == done.Id ? InsteadSpeed : WalkSpeed);
        var pace = speed * run.Speed.Value / 100;
        var metres = run.Unit == WorkUnit.Metres ? run.Amount : Rounded(pace * run.Amount);
        var seconds = run.Unit == WorkUnit.Seconds ? run.Amount : pace is { } known ? (int?)Math.Round(run.Amount / known, MidpointRounding.AwayFromZero) : null;
        return new(run, done, isRun ? metres : null, seconds, isRun && pace is not null, instead);
    }

    private static int? Rounded(decimal? metres) => metres is not { } far ? null
        : far < Far ? (int)Math.Round(far / NearStep, MidpointRounding.AwayFromZero) * NearStep : (int)Math.Round(far / FarStep, MidpointRounding.AwayFromZero) * FarStep;
}
