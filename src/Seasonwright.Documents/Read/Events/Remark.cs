using System.Globalization;
using System.Text.RegularExpressions;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read.Dates;
using Seasonwright.Documents.Read.Spans;

namespace Seasonwright.Documents.Read.Events;

/// <summary>What a remark beside an event may say of it, English and German. Common practice, no source.</summary>
internal static class Remark
{
    private const int NearDays = 150;

    private static readonly Regex SomePeople = EventWords.Words(@"(?:\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten|ein|eine|zwei|drei|vier|funf|sechs|sieben|acht|neun|zehn|some|several|einige|mehrere) (?:of (?:our|the) |of them |unserer )?(?:players?|spillere|spelare|joueurs|joueuses|jugadores|jugadoras|giocatori|giocatrici|spelers|speelsters|zawodniczk\w*|athletes?|girls|boys|women|men|students|pupils|called|selected|nominated|invited|reserves?|spieler|spielerinnen|spielern|athleten|athletinnen|schuler|schulerinnen|schulern|nominiert\w*|berufen\w*|eingeladen\w*|einberufen\w*)");

    private static readonly Regex Group = EventWords.Words(@"(?:for |fur |only |nur |the |die |all |alle |whole |ganze |our )*(?:squad|team|teams|everyone|everybody|all|alle|players|students|pupils|staff|club|school|schule|mannschaft|kader|verein|spieler|spielerinnen|schuler|schulerinnen|studenten|studierende|seniors?|juniors?|youth|jugend|academy|goalkeepers|torhuter|torhuterinnen|u-?\d{2}s?|under[- ]\d{2}s?|years? \d{1,2}(?: ?(?:-|and|&|und) ?\d{1,2})?|klassen? \d{1,2}(?: ?(?:-|und|/) ?\d{1,2})?|[1-5](?:st|nd|rd|th) (?:xv|xi|team|vii|viii)|[a-d] (?:squad|team)|(?:first|second) team|upper sixth|lower sixth|sixth form|oberstufe|mittelstufe|unterstufe|sek(?:undarstufe)? ?i{1,2})(?: only)?");

    private static readonly Regex Rooms = EventWords.Words("gym|hall|room|pool|pitch|track|court|field|halle|kraftraum|platz|weekends?|provisional\\w*|by \\w+");

    private static readonly Regex Unsure = EventWords.Words("provisional|provisionally|tentative|pencilled in|(?:dates? |days )?(?:tbc|tba|to be confirmed|not (?:yet )?(?:out|fixed|confirmed|known)(?: yet)?)|unconfirmed|vorlaufig|unter vorbehalt|noch nicht (?:fix|bestatigt|bekannt)|unbestatigt|termin(?:e)? (?:offen|folgt|folgen)");

    private static readonly Regex OnlySome = EventWords.Words(@"(?:only|nur) .+|.+ only");

    private const string PerCent = @"(?<n>\d{1,3}) ?(?:%|per ?cent|prozent)";

    private const string Possible = "training|trening|traening|traning|entrainement|entrenamiento|allenamento|load|belastung|umfang|share|possible|moglich";

    private static readonly Regex Share = new($@"\b(?:{Possible})\b.{{0,20}}?\b{PerCent}|\b{PerCent}.{{0,20}}?\b(?:{Possible})\b", RegexOptions.NonBacktracking | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture);

    private static readonly Regex Limit = new($@"\b(?:(?:only|nur) (?:in the |am )?(?:mornings?|afternoons?|evenings?|vormittags?|nachmittags?|abends?|morgens)|(?:mornings?|afternoons?|evenings?|vormittags?|nachmittags?|abends?) (?:only|possible|moglich|free|frei)|limited|reduced|restricted|optional|voluntary|light (?:training|work|week)|half the (?:squad|team)|eingeschrankt\w*|reduziert\w*|freiwillig|halbe\w* (?:kader|mannschaft)|"
        + $@"no (?:team )?(?:training|practice|practices|sessions?|gym)|kein\w* (?:training|mannschaftstraining|krafttraining|einheit\w*)|training (?:possible|impossible|off|stops|cancelled|moglich|entfallt|fallt aus)|no (?:pupils|students|school|lessons|classes)|pupil[- ]free|student[- ]free|staff only|schulfrei|unterrichtsfrei|kein\w* (?:schule|unterricht))\b|{PerCent}",
        RegexOptions.NonBacktracking | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture);

    private static readonly Regex Mornings = EventWords.Words("mornings?|vormittags?|morgens");

    private static readonly Regex Afternoons = EventWords.Words("afternoons?|nachmittags?");

    private static readonly Regex Deadline = EventWords.Words("by|reply|rsvp|deadline|confirm\\w*|register|registration|sign up|book by|pay by|names|issued|as of|stand|until|bis|spatestens|anmeld\\w*|meldeschluss|frist|ruckmeldung");

    private static readonly Regex Exception = EventWords.Words("except|excluding|excl|apart from|but not|not|without|ausser|ohne|nicht|ausgenommen");

    /// <summary>"3 players", "4 called up": some people, and it is not said who.</summary>
    public static bool IsSomePeople(string text) => SomePeople.IsMatch(SpanToken.Fold(text));

    /// <summary>The whole text names whom it concerns.</summary>
    public static bool IsWhom(string text)
    {
        var folded = SpanToken.Fold(text);
        return !IsLimit(text) && (Whole(SomePeople, folded) || IsSomePeople(text) && folded.Length < 60 || Whole(Group, folded) || Whole(OnlySome, folded) && folded.Length < 40 && !Rooms.IsMatch(folded) && new SpanFinder(text, false).Spans().Count == 0);
    }

    /// <summary>The whole text says that the days are not certain.</summary>
    public static bool IsUnsure(string text) => Whole(Unsure, SpanToken.Fold(text));

    /// <summary>It says that less training than usual is possible, but not how much.</summary>
    public static bool IsLimit(string text) => Limit.IsMatch(SpanToken.Fold(text));

    /// <summary>"only mornings possible": the part of the day that the event takes; null for any other limit.</summary>
    public static string? Taken(string text)
    {
        var (mornings, afternoons) = (Mornings.IsMatch(SpanToken.Fold(text)), Afternoons.IsMatch(SpanToken.Fold(text)));
        return mornings == afternoons ? null : Sentences.Say(mornings ? "part.pm" : "part.am");
    }

    /// <summary>"training 50 %": the share it says, 0 to 130; null where it says none.</summary>
    public static Percent? ShareOf(string text) => Share.Match(SpanToken.Fold(text)) is { Success: true } match ? Percent(match.Groups["n"].Value) : null;

    /// <summary>Whole per cent, with the sign or without; null for anything else.</summary>
    public static Percent? Percent(string text) =>
        int.TryParse(text.Trim().TrimEnd('%').Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var share) && share <= SetEvent.MostTraining ? new Percent(share) : null;

    /// <summary>A second event in a remark: days of its own, or a closed room. Null where the remark is only that.</summary>
    public static HiddenEvent? Hidden(string text, EventDraft beside)
    {
        if (beside.From is not { } from || beside.To is not { } to || to < from) return null;
        var (days, finder) = (new DaySpan(from, to), new SpanFinder(text, false));
        var (kind, isTest) = EventWords.Of(text);
        var span = finder.Spans().FirstOrDefault(found => !found.IsVague);
        var title = span is null ? text : Trimmed(text[..span.At] + " " + text[span.End..]);
        if (span is not null)
        {
            if (title.Length == 0 || Deadline.IsMatch(SpanToken.Fold(text)) && kind == EventKind.Other && !isTest) return null;
            // In the year that brings it nearest.
            var read = SpanYears.Read(span, new DaySpan(days.First.AddDays(-NearDays), days.Last.AddDays(NearDays)), DayOrder.DayFirst);
            if (read.Doubt == SpanDoubt.OpenEnd && read.From is { } start && days.Contains(start)) read = SpanReading.Clear(start, days.Last) with { Part = read.Part };
            if (read.Doubt == SpanDoubt.OpenStart && read.To is { } end && days.Contains(end)) read = SpanReading.Clear(days.First, end) with { Part = read.Part };
            return read.Days is null ? null : new HiddenEvent(kind, isTest, title, read, Exception.IsMatch(SpanToken.Fold(text)));
        }
        if (finder.WeekdayAlone() is { } weekday && (kind != EventKind.Other || isTest))
        {
            var only = days.Days().Where(day => day.DayOfWeek == weekday.Day).Take(60).ToValueList();
            return only.Count == 0 ? null : new HiddenEvent(kind, isTest, Trimmed(text[..weekday.At] + " " + text[weekday.End..]), SpanReading.Clear(only[0], only[^1]) with { Only = only.Count == 1 ? null : only }, false);
        }
        return kind == EventKind.RoomClosed && beside.Line.Kind != EventKind.RoomClosed ? new HiddenEvent(kind, isTest, text, SpanReading.Clear(days.First, days.Last), false) : null;
    }

    private static bool Whole(Regex words, string folded) => words.Match(folded) is { Success: true } match && match.Length >= folded.Trim(' ', '.', '!').Length;

    private static string Trimmed(string text) => Spelling.Tidy(text).Trim(' ', ',', ';', ':', '-', '–', '(', ')', '.');
}

/// <summary>A second event that a remark may hide.</summary>
/// <param name="IsException">The remark rather takes these days out.</param>
internal sealed record HiddenEvent(EventKind Kind, bool IsTest, string Title, SpanReading Read, bool IsException);
