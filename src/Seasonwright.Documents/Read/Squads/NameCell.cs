using System.Text.RegularExpressions;

namespace Seasonwright.Documents.Read.Squads;

/// <summary>A cell of a name column: the name without marks and brackets, and what stood in the brackets.</summary>
/// <param name="Beside">Plain words from brackets, without captain's marks.</param>
/// <param name="TellsHealth">Something was in it that tells of health and was taken out.</param>
internal sealed partial record NameCell(string Name, IReadOnlyList<string> Beside, bool TellsHealth)
{
    public static NameCell None { get; } = new("", [], false);

    public static NameCell Of(string cell)
    {
        var inside = Brackets().Matches(cell).Select(match => Spelling.Tidy(match.Groups["in"].Value)).Where(text => text.Length > 0).ToList();
        var name = Spelling.Tidy(Brackets().Replace(cell, " ")).TrimEnd('*', ' ', ',', ';', '†');
        // "Thackerbury, Oswin - knee": what stands behind a dash is no name.
        var behind = name.Split([" - ", " – ", " — ", ": "], 2, StringSplitOptions.TrimEntries);
        if (behind.Length == 2) (name, inside) = (behind[0], [.. inside, behind[1]]);
        if (name.EndsWith(" C", StringComparison.Ordinal) && name.Count(c => c == ' ') >= 2) name = name[..^2];
        var kept = inside.Where(text => !PositionWords.IsCaptain(text)).ToList();
        // Words in front of a comma are names even where they mean something else too ("Bruch, Mia"); a sentence is none.
        var isSentence = !PersonName.IsLike(name) && HealthWords.BesidePerson(name);
        if (isSentence) name = PersonName.FirstWords(name);
        if (!name.Any(char.IsLetter)) name = "";
        return new(Spelling.Cut(name, PersonName.LongestName), [.. kept.Where(text => !HealthWords.BesidePerson(text))], isSentence || kept.Exists(HealthWords.BesidePerson));
    }

    [GeneratedRegex(@"[(\[{](?<in>[^()\[\]{}]*)[)\]}]?", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Brackets();
}
