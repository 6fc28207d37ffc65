using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Edits;

/// <summary>How a session is named.</summary>
public static class SessionWords
{
    /// <summary>In the coach's words, else its kind's: "Practice".</summary>
    public static string Name(Session session) => session.Title;

    /// <summary>In the history: "Practice, Tue 5 Oct 2027, afternoon".</summary>
    internal static string Of(Session session) => Sentences.Say("session.words", Name(session), When(session));

    /// <summary>What became of it: moved, shortened, lengthened, harder, easier, cancelled, and whatever else differs.</summary>
    internal static string Changed(Session was, Session now) => string.Join(", ", Changes(was, now).DefaultIfEmpty(Sentences.Say("session.same")));

    private static IEnumerable<string> Changes(Session was, Session now) =>
        When(was) == When(now) || now.IsCancelled ? DetailWords.Of(was, now) : DetailWords.Of(was, now).Prepend(Sentences.Say("session.moved", When(now)));

    private static string When(Session session) => Sentences.Say("session.when", MatchWords.Of(session.Day), Sentences.Say($"slot.{session.Slot}"));
}
