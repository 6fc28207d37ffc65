using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Edits;

/// <summary>How the history names a session: "Practice, Tue 5 Oct 2027, afternoon".</summary>
internal static class SessionWords
{
    public static string Of(Session session) => Sentences.Say("session.words", session.Name ?? Sentences.Say($"session.{session.Kind}"), When(session));

    /// <summary>What became of it: moved, shortened, lengthened, harder, easier, cancelled, and whatever else differs.</summary>
    public static string Changed(Session was, Session now) => string.Join(", ", Changes(was, now).DefaultIfEmpty(Sentences.Say("session.same")));

    private static IEnumerable<string> Changes(Session was, Session now) =>
        When(was) == When(now) ? DetailWords.Of(was, now) : DetailWords.Of(was, now).Prepend(Sentences.Say("session.moved", When(now)));

    private static string When(Session session) => Sentences.Say("session.when", MatchWords.Of(session.Day), Sentences.Say($"slot.{session.Slot}"));
}
