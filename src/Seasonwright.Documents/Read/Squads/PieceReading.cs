using System.Text.RegularExpressions;
using Seasonwright.Documents.Read.Dates;

namespace Seasonwright.Documents.Read.Squads;

/// <summary>What one piece of a line of prose says of the person named in front of it.</summary>
internal sealed partial class PieceReading
{
    /// <summary>Nobody says more of a player between two commas; what is longer is only a remark.</summary>
    private const int LongestPiece = 120;

    private const int OldestAge = 45;

    private static readonly SquadLine Nobody = new(0, "");

    public PieceReading(SquadLine line, Piece piece)
    {
        var text = piece.Text.Trim(' ', '.', ':', '*');
        Line = line;
        IsKnown = true;
        if (text.Length == 0 || PositionWords.IsCaptain(text)) return;
        if (text.Length > LongestPiece)
        {
            (TellsHealth, IsKnown) = (HealthWords.BesidePerson(text), false);
            if (!TellsHealth) Line = line with { Remarks = [.. line.Remarks, Spelling.Cut(text, LongestPiece)] };
            return;
        }
        if (Lifts(text) is { Count: > 0 } lifts) Line = line with { Lifts = [.. line.Lifts, .. lifts] };
        else if (HealthWords.BesidePerson(text) && !IsPosition(text)) TellsHealth = true;
        else if (Born().Match(text) is { Success: true } born && line.Born.Length == 0) Line = line with { Born = born.Groups["day"].Value };
        else if (line.Born.Length == 0 && DateText.Find(text) is { LacksYear: false, Start: 0 } date && date.End >= text.Length - 1) Line = line with { Born = text };
        else if (line.Mass.Length == 0 && MassText.Read(text) is { Unit: not null }) Line = line with { Mass = text };
        else if (line.Height.Length == 0 && HeightText.IsMarked(text)) Line = line with { Height = text };
        else if (line.Age.Length == 0 && Age().Match(text) is { Success: true } age) Line = line with { Age = age.Groups["n"].Value };
        else if (line.Position.Length == 0 && IsPosition(text)) Line = line with { Position = text };
        else if (text.Length <= 3 && text.All(char.IsAsciiDigit) && line.Bare.Length == 0) Line = line with { Bare = text };
        else (Line, IsKnown) = (line with { Remarks = [.. line.Remarks, text] }, false);
    }

    /// <summary>The line with it.</summary>
    public SquadLine Line { get; }

    /// <summary>It says something that lists say of people.</summary>
    public bool IsKnown { get; }

    /// <summary>It tells of health and was left out.</summary>
    public bool TellsHealth { get; }

    /// <summary>Whether a text by itself says one thing that lists say of people; a bare figure says nothing.</summary>
    public static bool Says(string text) => new PieceReading(Nobody, new Piece(text, false)) is { IsKnown: true, Line: var told } && told != Nobody && told.Bare.Length == 0;

    /// <summary>Whether a bare figure looks like an age rather than a body mass.</summary>
    public static bool IsAge(int figure) => figure <= OldestAge;

    private static bool IsPosition(string text) => text.Split(['/', '&', '+']).All(part => PositionWords.IsPosition(part.Trim()));

    // "squat 140 x 3", "bench 105 clean 80": a lift with its figures, or several, and nothing else.
    private static List<LiftCell> Lifts(string text)
    {
        var lifts = new List<LiftCell>();
        var end = 0;
        foreach (Match match in Lift().Matches(text))
        {
            var called = match.Groups["name"].Value.Trim();
            if (match.Index != end || Exercises.Of(SquadHeadings.Plain(called)) is not { } exercise || LiftText.Read(match.Groups["figures"].Value.Trim()) is not { } read) return [];
            lifts.Add(new(exercise, called, null, SquadHeadings.RepsIn(called), read));
            end = match.Index + match.Length;
        }
        return end == text.Length ? lifts : [];
    }

    [GeneratedRegex(@"(?<name>[\p{L}&+][\p{L}&+ \-]*?(?:[13] ?RM)?) ?:? ?(?<figures>[0-9]{1,3}(?:[.,][0-9]{1,2})? ?(?:kgs?|lbs?)?(?: ?[x×*@] ?[0-9]{1,3} ?(?:kgs?|lbs?|reps?)?)?)(?: |$)", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Lift();

    [GeneratedRegex(@"^(?:b\.?|born|geb\.?|geboren|dob|d\.o\.b\.?|jg\.?|jahrgang|née?|nato|nata|född|født|nac\.?|ur\.?|\*)(?!\p{L})(?: on| am| le| il| den)?[ :]*(?<day>.*[0-9].*)$", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Born();

    [GeneratedRegex(@"^(?:aged?|alter|edad|età|âge)? ?:? ?(?<n>[1-7]?[0-9]) ?(?:yrs?\.?|years?(?: old)?|y/?o|j\.?|jahre?|ans|años|anni|år|jaar|lat|anos)$|^(?:aged?|alter|edad|età|âge) ?:? ?(?<n>[1-7]?[0-9])$", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Age();
}
