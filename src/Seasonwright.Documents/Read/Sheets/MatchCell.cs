using System.Globalization;
using System.Text.RegularExpressions;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read.Dates;
using Seasonwright.Documents.Read.Fixtures;
using Seasonwright.Documents.Read.Times;

namespace Seasonwright.Documents.Read.Sheets;

/// <summary>
/// A match as a coach notes it in a cell: "H Kalnes (Fri 19.00)", "@Brovik Wed", "Wexcombe (A) Cup R3", "Cup? (if we win)". What the
/// cell does not say stays null.
/// </summary>
/// <param name="Weekdays">Days of the week it names.</param>
/// <param name="Written">The date it names, as written.</param>
/// <param name="MovedTo">"moved to 12.12.": this is no match day any more.</param>
/// <param name="IsDoubtful">It bears a question mark or says that it is not settled.</param>
/// <param name="Times">"x2": how many, otherwise 1.</param>
internal sealed record MatchCell(
    string? Opponent,
    Venue? Venue,
    ValueList<DayOfWeek> Weekdays,
    WrittenDate? Written,
    TimeOnly? KickOff,
    string? Competition,
    string? Round,
    string? Place,
    string? Condition,
    WrittenDate? MovedTo,
    bool IsFriendly,
    bool IsKey,
    bool IsCancelled,
    bool IsPostponed,
    bool IsDoubtful,
    bool IsTournament,
    int Times)
{
    private static readonly Regex Exclaimed = Pattern(@"!!+");

    private static readonly Regex Side = Pattern(@"[\(\[]\s*(?<side>H|A|N|home|away|neutral|heim|auswärts)\s*[\)\]]");

    private static readonly Regex Bracket = Pattern(@"[\(\[](?<words>[^()\[\]]*)[\)\]]");

    private static readonly Regex If = Pattern(@"[\(\[]\s*(?<words>(?:only |nur )?(?:if|falls|wenn|sofern|si|se|hvis|om|indien)\s[^()\[\]]*)[\)\]]|(?:,|–|-)?\s*\b(?<words>(?:only |nur )?(?:if|falls)\s.+)$");

    private static readonly Regex Moved = Pattern(@"[\(\[–—,-]?\s*\b(?:moved|verlegt|verschoben|flyttet|flyttad|now|jetzt|reporté|pospuesto|rinviata)\s+(?:to|auf|til|till|au|al)\b");

    private static readonly Regex Unsettled = Pattern(@"[\(\[–—,-]?\s*\b(?:tbc|tba|tbd|to be confirmed|provisional|vorläufig)\b\.?\s*[\)\]]?");

    private static readonly Regex Repeated = Pattern(@"\b(?:x\s?(?<n>[2-4])|(?<n>[2-4])\s?x)\b");

    private static readonly Regex Clock = Pattern(@"(?:^|[^\d.:])(?<time>(?:[01]?\d|2[0-3])[:.h][0-5]\d(?:\s?(?:am|pm|uhr|h)\b)?|(?:1[0-2]|[1-9])\s?[ap]m)(?:$|[^\d.:\w])");

    private static readonly Regex Empty = Pattern(@"[\(\[]\s*[\)\]]");

    private static readonly Regex SmallSided = Pattern(@"^\d+\s?-?(?:a|v|vs|on|gegen)-?\s?(?:side|\d+)");

    private static readonly Regex Tournament = Pattern(@"\b(?:7s|10s|sevens|tournament|turnier|tournoi|torneo|turnering|toernooi)\b");

    private static readonly Regex Sevens = Pattern(@"\b(?:7s|10s|sevens)\b");

    private static readonly Regex Competitions = Pattern(@"^(?:\w*(?:cup|pokal)|coupe|copa|coppa|puchar|beker|league|liga|ligue|trophy|shield|play-?offs?|championships?|meisterschaft)$");

    private static Regex Pattern(string pattern) => new(pattern, RegexOptions.NonBacktracking | RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture);

    /// <summary>A knock-out round or a cup without an opponent: it must be reached first.</summary>
    public bool IsConditional => Condition is not null || Opponent is null && !IsFriendly && (Round is not null || Competition is not null) && !IsTournament;

    /// <summary>Whether a cell is surely a match: it marks home or away.</summary>
    public static bool HasMark(string text) => Spelling.Tidy(text) is var tidy && (tidy.StartsWith('@') || Side.IsMatch(tidy) || tidy.StartsWith("H ", StringComparison.Ordinal) || tidy.StartsWith("vs ", StringComparison.OrdinalIgnoreCase));

    /// <summary>Null where the cell says that there is no match ("bye", "free", "?"), or something that is none ("5-a-side").</summary>
    /// <param name="days">Where the cell stands; a date of these days is preferred to a time.</param>
    public static MatchCell? Read(string cell, DaySpan days, Legend legend)
    {
        var text = Spelling.Tidy(cell);
        if (text.Length == 0 || ListWords.IsBye(text) || TimeText.IsUnknown(text) || ListWords.IsInside(text) || SmallSided.IsMatch(text) || !text.Any(char.IsLetter)) return null;
        var isTournament = Tournament.IsMatch(text);

        string? Taken(Regex pattern, string group = "0")
        {
            var match = pattern.Match(text);
            if (!match.Success) return null;
            text = Spelling.Tidy($"{text[..match.Index]} {text[(match.Index + match.Length)..]}");
            return match.Groups[group].Value.Trim();
        }

        var isKey = Taken(Exclaimed) is not null;
        WrittenDate? movedTo = null;
        if (Moved.Match(text) is { Success: true } moved && DateText.Find(text, moved.Index + moved.Length) is { } target)
            (movedTo, text) = (target, text[..moved.Index].TrimEnd(' ', '-', '–', '—', ',', '('));
        var condition = Taken(If, "words");
        if (condition is not null && !ListWords.IsCondition(condition)) (condition, text) = (null, Spelling.Tidy(cell));
        bool isCancelled = ListWords.IsCancelled(text), isPostponed = ListWords.IsPostponed(text);
        if (isCancelled || isPostponed) text = Spelling.Tidy(string.Join(' ', text.Split(' ').Where(word => !ListWords.IsCancelled(word.Trim('(', ')')) && !ListWords.IsPostponed(word.Trim('(', ')')))));
        var isDoubtful = Taken(Unsettled) is not null;
        var times = Taken(Repeated, "n") is { } count ? int.Parse(count, CultureInfo.InvariantCulture) : 1;
        var (kickOff, written, weekdays) = When(ref text, days);

        if (isTournament)
        {
            var side = Side.Match(text) is { Success: true } marked ? VenueText.Mark(marked.Groups["side"].Value) : text.Contains('@', StringComparison.Ordinal) ? Core.Seasons.Venue.Away : (Venue?)null;
            return new(Left(Side.Replace(text, " ")), side, weekdays, written, kickOff, Sevens.IsMatch(text) ? Sevens.Match(text).Value : null, null, null, condition, movedTo, false, isKey, isCancelled, isPostponed, isDoubtful, true, times);
        }

        Venue? venue = Taken(Side, "side") is { } sideMark ? VenueText.Mark(sideMark) : null;
        string? competition = null, round = null, place = null;
        var isFriendly = false;
        if (Taken(Bracket, "words") is { Length: > 0 } inside)
        {
            if (ListWords.IsFriendly(inside)) isFriendly = true;
            else if (IsCompetition(inside)) competition = inside;
            else place = inside.Trim();
        }
        // Marks in front, one after the other: "F @", "Cup H", "SF H".
        for (var goesOn = true; goesOn && text.Length > 0;)
        {
            var (first, rest) = text.IndexOf(' ', StringComparison.Ordinal) is > 0 and var at ? (text[..at], text[(at + 1)..]) : (text, "");
            var word = first.Trim(':', ',', '.', '?');
            var meaning = legend[word] ?? "";
            goesOn = true;
            if (first.StartsWith('@')) (venue, text) = (Core.Seasons.Venue.Away, text[1..].TrimStart());
            else if (word.Length <= 2 && ListWords.IsFriendly(meaning)) (isFriendly, text) = (true, rest);
            else if (word.Length <= 2 && VenueText.Mark(meaning) is { } told) (venue, text) = (told, rest);
            else if (venue is null && word is "H" or "A" or "N" && VenueText.Mark(word) is { } mark) (venue, text) = (mark, rest);
            else if (word.Length > 3 && VenueText.Mark(word) is { } spelled) (venue, text) = (spelled, rest);
            else if (word is "v" or "vs" or "VS" or "gegen" or "at") (venue, text) = (word == "at" ? Core.Seasons.Venue.Away : venue, rest);
            else if (ListWords.IsFriendly(word)) (isFriendly, text) = (true, rest);
            else if (IsCompetition(word)) (competition, isDoubtful, text) = (word, isDoubtful || first.EndsWith('?'), rest);
            else if (RoundText.InHeading(word) is not null) (round, isDoubtful, text) = (word, isDoubtful || first.EndsWith('?'), rest);
            else goesOn = false;
        }
        // What is played, behind the opponent: "Wexcombe Cup R3", "Wexcombe, friendly".
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var from = Array.FindIndex(words, word => IsCompetition(word.Trim(',', '(', ')', '?')) || ListWords.IsFriendly(word.Trim(',', '(', ')')));
        if (from > 0)
        {
            var behind = string.Join(' ', words[from..]).Trim(',', ' ');
            if (ListWords.IsFriendly(behind)) isFriendly = true;
            else competition ??= behind;
            text = string.Join(' ', words[..from]);
        }
        if (text.EndsWith('?')) (isDoubtful, text) = (true, text.TrimEnd('?', ' '));
        var opponent = Left(text);
        if (round is not null && opponent is "day" or "Day" or "weekend") (opponent, isDoubtful) = (null, true);
        // A final has its place in brackets, and is nobody's home.
        if (round is not null && opponent is null && place is not null && venue is null) venue = Core.Seasons.Venue.Neutral;
        // A knock-out game written down without a doubt is one a season is planned for.
        if (round is not null && !isDoubtful && competition is null) isKey = true;
        if (opponent is null && competition is null && round is null && venue is null && !isFriendly) return null;
        return new(opponent, venue, weekdays, written, kickOff, competition, round, place, condition, movedTo, isFriendly, isKey, isCancelled, isPostponed, isDoubtful, false, times);
    }

    private static (TimeOnly?, WrittenDate?, ValueList<DayOfWeek>) When(ref string text, DaySpan days)
    {
        TimeOnly? kickOff = null;
        if (Clock.Match(text).Groups["time"] is { Success: true } clock && TimeText.Read(clock.Value) is { Sense: TimeSense.Known } time
            && !(DateText.Find(clock.Value) is { } asDate && new[] { days.First.Year, days.Last.Year }.Any(year => asDate.First.In(year, DayOrder.DayFirst) is { } day && days.Contains(day))))
            (kickOff, text) = (time.Time, $"{text[..clock.Index]} {text[(clock.Index + clock.Length)..]}");
        var written = DateText.Find(text) is { Kind: WrittenKind.Day } date ? date : null;
        var weekdays = new List<DayOfWeek>();
        if (written is not null)
        {
            if (written.First.Weekday is { } named) weekdays.Add(named);
            text = DateText.Without(text, written);
        }
        var left = new List<string>();
        var words = text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries);
        for (var i = 0; i < words.Length; i++)
        {
            var bare = words[i].Trim('(', ')', ',', '.', '+', '&', '/');
            if (CalendarWords.Weekday(bare) is { } weekday && (i == 0 ? IsWeekdayInFront(words) : bare.Length >= 3 || IsShortWeekday(bare, words, i)))
            {
                weekdays.Add(weekday);
                if (words[i].StartsWith('(')) left.Add("(");
                if (words[i].EndsWith(')')) left.Add(")");
            }
            else if (i > 0 && kickOff is null && TimeText.Read(bare) is { Sense: TimeSense.Known, Time: { } noon } && bare.All(char.IsLetter)) kickOff = noon;
            else if (!(words[i] is "+" or "&" && weekdays.Count > 0)) left.Add(words[i]);
        }
        text = Spelling.Tidy(Empty.Replace(string.Join(' ', left), " "));
        return (kickOff, written, weekdays.Distinct().ToValueList());
    }

    // "Sat Kalnes (H)": as a rule the opponent stands in front, and may begin with a word that is a weekday in another language ("Mar Azul").
    private static bool IsWeekdayInFront(string[] words) => words.Length > 1 && words[0].TrimEnd(':', ',', '.') is { Length: >= 3 } bare
        && (bare.Length > 4 || words[0] != bare || bare.ToUpperInvariant() is "MON" or "TUE" or "TUES" or "WED" or "WEDS" or "THU" or "THUR" or "FRI" or "SAT" or "SUN");

    // Words of two letters are more often something else: "Sa" is a Saturday with a capital, at the end, in brackets or before a time.
    private static bool IsShortWeekday(string bare, string[] words, int i) => bare is [>= 'A' and <= 'Z', >= 'a' and <= 'z']
        && (i == words.Length - 1 || words[i].StartsWith('(') || words[i + 1] is "+" or "&" or ")" || TimeText.Read(words[i + 1].Trim('(', ')', ',')).Sense == TimeSense.Known);

    private static string? Left(string text) => Spelling.Tidy(text).Trim(' ', ',', ';', ':', '-', '–', '—', '(') is { Length: > 0 } left ? left : null;

    private static bool IsCompetition(string word) => Competitions.IsMatch(word);
}
