using System.Text.RegularExpressions;

namespace Seasonwright.Documents.Read.Squads;

/// <summary>A name written in one piece, cut into family and given names.</summary>
/// <param name="Doubt">What the writing does not tell.</param>
internal sealed partial record PersonName(string Family, string Given, NameDoubt Doubt)
{
    public const int LongestName = 80;

    private static readonly HashSet<string> Particles = new("van von der den de la le du da das dos del della di do de' d' der ten ter te 't zu zum zur af av el al bin ibn ben bint ap ab ferch mac mc ní ni nic ó o st st. san santa y e i vom vander".Split(' '), StringComparer.OrdinalIgnoreCase);

    /// <summary>"Family, Given" says it itself; else <paramref name="familyFirst"/> does.</summary>
    public static PersonName Of(string name, bool familyFirst)
    {
        var comma = name.IndexOf(',', StringComparison.Ordinal);
        if (comma > 0 && name[(comma + 1)..].Trim() is { Length: > 0 } given) return new(name[..comma].Trim(), given, NameDoubt.None);
        var words = name.Trim(',', ' ').Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 0) return new("", "", NameDoubt.Alone);
        if (words.Length == 1) return new(words[0], "", NameDoubt.Alone);
        if (Shouted(words) is { } shouted) return shouted;
        return familyFirst ? FamilyFirst(words) : GivenFirst(words);
    }

    /// <summary>An initial tells: "T. Thackerbury" has the given name first, "Thackerbury T." the family name. Null where nothing tells.</summary>
    public static bool? TellsFamilyFirst(string name)
    {
        var words = name.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length < 2 || name.Contains(',', StringComparison.Ordinal) || Shouted(words) is not null) return null;
        var (first, last) = (IsInitial(words[0]), IsInitial(words[^1]));
        return first == last ? null : last;
    }

    /// <summary>A few words that begin with capitals, or particles; letters, apostrophes, hyphens and points only.</summary>
    public static bool IsLike(string text)
    {
        if (text.Length is < 2 or > LongestName || !Letters().IsMatch(text)) return false;
        var words = text.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries);
        return words.Length is > 0 and <= 7 && words.All(word => char.IsUpper(word[0]) || Particles.Contains(word) || word is ['\'' or '’', ..] || char.GetUnicodeCategory(word[0]) == System.Globalization.UnicodeCategory.OtherLetter)
            && words.Any(word => char.IsUpper(word[0]) || char.GetUnicodeCategory(word[0]) == System.Globalization.UnicodeCategory.OtherLetter);
    }

    /// <summary>The name that a sentence begins with ("Anna Berg out with her knee"): as many words as may be a name.</summary>
    public static string FirstWords(string text) =>
        string.Join(' ', text.Split(' ').TakeWhile(word => (IsLike(word) && char.IsUpper(word[0]) || Particles.Contains(word)) && !HealthWords.BesidePerson(word)).Take(4)).TrimEnd(',', '.');

    // "DUPONT Jean", "Jean DUPONT": the word in capitals is the family name.
    private static PersonName? Shouted(string[] words)
    {
        static bool IsShouted(string word) => word.Count(char.IsLetter) > 1 && !word.Any(char.IsLower);
        var shouted = words.Select(IsShouted).ToList();
        if (!shouted.Contains(true) || !shouted.Contains(false)) return null;
        var (first, last) = (shouted.IndexOf(true), shouted.LastIndexOf(true));
        if (first > 0 && last < words.Length - 1 || shouted.Skip(first).Take(last - first + 1).Contains(false)) return null;
        return new(string.Join(' ', words[first..(last + 1)]), string.Join(' ', words[..first].Concat(words[(last + 1)..])), NameDoubt.None);
    }

    // The family name begins at the first small particle, else it is the last word.
    private static PersonName GivenFirst(string[] words)
    {
        var particle = Array.FindIndex(words, 1, Particles.Contains);
        var at = particle > 0 && particle < words.Length - 1 ? particle : words.Length - 1;
        return new(string.Join(' ', words[at..]), string.Join(' ', words[..at]), words.Length > 2 && !words[..^1].All(IsInitial) ? NameDoubt.Split : NameDoubt.None);
    }

    private static PersonName FamilyFirst(string[] words)
    {
        var particles = words.TakeWhile(Particles.Contains).Count();
        var at = Math.Min(particles + 1, words.Length - 1);
        return new(string.Join(' ', words[..at]), string.Join(' ', words[at..]), words.Length > 2 && words.Length - at > 1 ? NameDoubt.Split : NameDoubt.None);
    }

    private static bool IsInitial(string word) => word is [var letter, '.'] && char.IsLetter(letter) || word is [var alone] && char.IsUpper(alone) || word is [_, '.', _, '.'];

    [GeneratedRegex(@"^[\p{L}\p{M}'’‘´`.,\- ]+$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Letters();
}

/// <summary>What the writing of a name does not tell.</summary>
internal enum NameDoubt
{
    None,

    /// <summary>Three words or more: where the family name begins.</summary>
    Split,

    /// <summary>One word only.</summary>
    Alone,
}
