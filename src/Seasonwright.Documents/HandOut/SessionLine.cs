using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut;

/// <summary>How a session is told to those who come to it.</summary>
internal static class SessionLine
{
    public static string Name(Session session) => session.Name ?? Sentences.Say($"session.{session.Kind}");

    /// <summary>"90 min, RPE 5.5".</summary>
    public static string Dose(Session session) => Say("session.dose", session.Minutes.Value, session.Rpe.Value.ToString("0.#", CultureInfo.InvariantCulture));

    /// <summary>"17:30 Practice, 90 min, RPE 5.5, Hall B · changed 12:04".</summary>
    /// <param name="season">Names its groups.</param>
    /// <param name="changed">When it was published otherwise than before; null for one that is as it was.</param>
    public static string Of(Session session, Season season, TimeOnly? changed)
    {
        var groups = session.Groups?.Select(id => season.Groups.FirstOrDefault(line => line.Id == id)?.Name).OfType<string>().ToList() ?? [];
        var line = string.Join(", ", new[] { Name(session), Dose(session), session.Place, groups.Count > 0 ? string.Join(" + ", groups) : null }.OfType<string>());
        string?[] parts = [Say("session.at", session.Start?.Iso() ?? Sentences.Say($"slot.{session.Slot}"), line), .. (session.Waves ?? []).Select(wave => $"{wave.Start.Iso()} {wave.Name}"),
            session.IsCancelled ? Say("session.cancelled") : null, changed is { } at ? Say("session.changed", at.Iso()) : null];
        return string.Join(" · ", parts.OfType<string>());
    }
}
