using System.Collections.Immutable;

namespace Seasonwright.Core.Setups;

/// <summary>Finds exercises by what is typed: words in any order, each begun or whole, of the name, the pattern, the muscles or the equipment.</summary>
public static class ExerciseSearch
{
    private static readonly char[] Gaps = [' ', '-', ',', '\t'];

    /// <summary>Every exercise that has all the words, best first: a name that starts with one, a word of the name that does, one within the name, then the rest. Equally good ones keep their order.</summary>
    public static ImmutableArray<Exercise> Search(this IEnumerable<Exercise> exercises, string text)
    {
        var words = WordsOf(text);
        return [.. exercises.Select(exercise => (Exercise: exercise, Rank: Rank(exercise, words))).Where(found => found.Rank is not null).OrderBy(found => found.Rank).Select(found => found.Exercise)];
    }

    /// <summary>0 for the best; null where a word is missing.</summary>
    private static int? Rank(Exercise exercise, string[] words)
    {
        var name = WordsOf(exercise.Name);
        var rest = WordsOf(string.Join(' ', exercise.Muscles.Select(ExerciseWords.Word).Concat(exercise.Equipment.Select(ExerciseWords.Word)).Prepend(exercise.Pattern.Word())));
        var sum = 0;
        foreach (var word in words)
        {
            if ((Place(name, rest, word) ?? (Singular(word) is { } one ? Place(name, rest, one) : null)) is not { } place) return null;
            sum += place;
        }
        return sum;
    }

    private static int? Place(string[] name, string[] rest, string word) =>
        Starts(name[0], word) ? 0
        : name.Any(part => Starts(part, word)) ? 1
        : name.Any(part => part.Contains(word, StringComparison.OrdinalIgnoreCase)) ? 2
        : rest.Any(part => Starts(part, word)) ? 3
        : rest.Any(part => part.Contains(word, StringComparison.OrdinalIgnoreCase)) ? 4
        : null;

    /// <summary>"squats" finds the squat.</summary>
    private static string? Singular(string word) => word.Length > 3 && word.EndsWith('s') ? word[..^1] : null;

    private static bool Starts(string part, string word) => part.StartsWith(word, StringComparison.OrdinalIgnoreCase);

    private static string[] WordsOf(string text) => text.Split(Gaps, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
}
