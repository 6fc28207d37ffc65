using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Squad;

/// <summary>The maxima of a squad in what it is tested in most, a row for each player.</summary>
/// <param name="Exercises">At most <see cref="MostExercises"/>, tested by most players first.</param>
/// <param name="Rows">In the order of the players, each with a maximum per exercise; null where nothing is known.</param>
public sealed record StrengthTable(ValueList<Exercise> Exercises, ValueList<(Player Player, ValueList<Maximum?> Maxima)> Rows)
{
    /// <summary>As many columns as one sheet of paper holds.</summary>
    public const int MostExercises = 6;

    public static StrengthTable Of(IReadOnlyCollection<Player> players, DateOnly day, Setup setup)
    {
        var exercises = players.SelectMany(player => player.Lifts.Where(test => test.Day <= day)).GroupBy(test => test.Exercise)
            .Select(tested => (Exercise: setup.Exercise(tested.Key), People: tested.Select(test => test.Person).Distinct().Count(), Sets: tested.Count()))
            .Where(tested => tested.Exercise is not null).OrderByDescending(tested => tested.People).ThenByDescending(tested => tested.Sets).ThenBy(tested => tested.Exercise!.Name, StringComparer.OrdinalIgnoreCase)
            .Take(MostExercises).Select(tested => tested.Exercise!).ToValueList();
        return new(exercises, players.Select(player => (player, exercises.Select(exercise => Maximum.On(day, player.Lifts, exercise, setup)).ToValueList())).ToValueList());
    }
}
