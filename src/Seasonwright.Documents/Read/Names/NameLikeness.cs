using System.Globalization;
using System.Text;

namespace Seasonwright.Documents.Read.Names;

/// <summary>
/// Whether two names may be one club written two ways. It only ever leads to a question, never to a merge, and it asks too often
/// rather than too rarely; but names that differ in a number ("Kalnes 2", "U15", "II") or a second-team word are two teams.
/// </summary>
public static class NameLikeness
{
    private static readonly HashSet<string> ClubWords = new("hk fc sc sv if il bk ik hc ac as cd cf rc rfc afc tv tsv vfl vfb vfv sg hsg tus ff gif hb club handball volleyball rugby football basketball hockey the de der e v ev".Split(' '), StringComparer.Ordinal);

    private static readonly HashSet<string> TeamWords = new("ii iii iv 1st 2nd 3rd 4th first second third jv reserves reserve youth juniors junior women men ladies damen herren girls boys b c academy u".Split(' '), StringComparer.Ordinal);

    private static readonly Dictionary<string, string> Short = new(StringComparer.Ordinal)
    {
        ["saint"] = "st",
        ["sankt"] = "st",
        ["sainte"] = "st",
        ["ste"] = "st",
        ["united"] = "utd",
        ["university"] = "uni",
        ["universität"] = "uni",
        ["univ"] = "uni",
        ["mount"] = "mt",
        ["and"] = "&",
        ["und"] = "&",
    };

    internal static bool IsClubWord(string word) => ClubWords.Contains(word);

    internal static bool IsTeamWord(string word) => TeamWords.Contains(word);

    public static bool AreAlike(string one, string other)
    {
        var (a, b) = (Words(one), Words(other));
        if (a.Count == 0 || b.Count == 0 || Spelling.Same(one, other)) return false;
        if (!Marks(a).SequenceEqual(Marks(b), StringComparer.Ordinal)) return false;
        var (squeezedA, squeezedB) = (string.Concat(a), string.Concat(b));
        if (squeezedA == squeezedB) return true;
        if (a.Order(StringComparer.Ordinal).SequenceEqual(b.Order(StringComparer.Ordinal), StringComparer.Ordinal)) return true;
        if (a.Count == b.Count && a.Zip(b).All(pair => IsShortFor(pair.First, pair.Second))) return true;
        var (coreA, coreB) = (string.Concat(a.Where(w => !ClubWords.Contains(w))), string.Concat(b.Where(w => !ClubWords.Contains(w))));
        if (coreA.Length >= 3 && coreA == coreB && (a.All(b.Contains) || b.All(a.Contains))) return true;
        var shorter = Math.Min(squeezedA.Length, squeezedB.Length);
        var allowed = shorter >= 10 ? 2 : shorter >= 5 ? 1 : 0;
        return allowed > 0 && Distance(squeezedA, squeezedB, allowed) <= allowed;
    }

    // "Coll." and "College", "St" and "Saint"
    private static bool IsShortFor(string one, string other)
    {
        var (a, b) = (Short.GetValueOrDefault(one, one), Short.GetValueOrDefault(other, other));
        if (a == b) return true;
        var (brief, full) = a.Length < b.Length ? (a, b) : (b, a);
        return brief.Length >= 3 && full.StartsWith(brief, StringComparison.Ordinal);
    }

    // What makes two teams of one club: numbers and words such as "II" or "JV".
    private static IEnumerable<string> Marks(List<string> words) => words.Where(word => TeamWords.Contains(word) || word.Any(char.IsAsciiDigit)).Order(StringComparer.Ordinal);

    // Lower-case words of letters and digits, without accents; points inside a word ("I.F.") and apostrophes are nothing.
    internal static List<string> Words(string name)
    {
        var words = new List<string>();
        var word = new StringBuilder();
        foreach (var c in Spelling.Fold(name).Normalize(NormalizationForm.FormD))
        {
            if (CharUnicodeInfo.GetUnicodeCategory(c) == UnicodeCategory.NonSpacingMark || c is '.' or '\'' or '’' or '‘' or '`' or '´') continue;
            if (char.IsLetterOrDigit(c)) word.Append(c switch { 'ø' => "o", 'æ' => "ae", 'ß' => "ss", 'ð' => "d", 'þ' => "th", 'ł' => "l", 'œ' => "oe", _ => c.ToString() });
            else if (word.Length > 0)
            {
                words.Add(word.ToString());
                word.Clear();
            }
        }
        if (word.Length > 0) words.Add(word.ToString());
        return words;
    }

    /// <summary>Letters to change, add or take out (Levenshtein 1966); counting stops above the limit.</summary>
    private static int Distance(string one, string other, int limit)
    {
        if (Math.Abs(one.Length - other.Length) > limit || one.Length > 100) return limit + 1;
        var row = Enumerable.Range(0, other.Length + 1).ToArray();
        for (var i = 1; i <= one.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= other.Length; j++)
            {
                var above = row[j];
                row[j] = Math.Min(Math.Min(row[j], row[j - 1]) + 1, diagonal + (one[i - 1] == other[j - 1] ? 0 : 1));
                diagonal = above;
            }
        }
        return row[^1];
    }
}
