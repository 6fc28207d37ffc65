using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut;

/// <summary>How a session is told to those who come to it.</summary>
internal static class SessionLine
{
    /// <summary>"90 min, RPE 5.5".</summary>
    public static string Dose(Session session) => Say("session.dose", session.Minutes.Value, session.Rpe.Value.ToString("0.#", CultureInfo.InvariantCulture));

    /// <summary>Names of the groups it is for; none for everyone.</summary>
    public static IReadOnlyList<string> Groups(Session session, Season season) => [.. (session.Groups ?? []).Select(id => season.Groups.FirstOrDefault(line => line.Id == id)?.Name).OfType<string>()];

    /// <summary>"17:45 early".</summary>
    public static IEnumerable<string> Waves(Session session) => (session.Waves ?? []).Select(wave => $"{wave.Start.Iso()} {wave.Name}");

    /// <summary>"17:30 Practice, 90 min, RPE 5.5, Hall B · changed 12:04".</summary>
    /// <param name="season">Names its groups.</param>
    /// <param name="changed">When it was published otherwise than before; null for one that is as it was.</param>
    public static string Of(Session session, Season season, TimeOnly? changed)
    {
        var line = string.Join(", ", new[] { SessionWords.Name(session), Dose(session), session.Place, Groups(session, season) is { Count: > 0 } groups ? string.Join(" + ", groups) : null }.OfType<string>());
        string?[] parts = [Say("session.at", session.Start?.Iso() ?? Sentences.Say($"slot.{session.Slot}"), line), .. Waves(session),
            session.IsCancelled ? Say("session.cancelled") : null, changed is { } at ? Say("session.changed", at.Iso()) : null];
        return string.Join(" · ", parts.OfType<string>());
    }
}
