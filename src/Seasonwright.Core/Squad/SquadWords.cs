namespace Seasonwright.Core.Squad;

/// <summary>The squad's closed lists in plain words.</summary>
public static class SquadWords
{
    /// <summary>"no jump", "upper body only".</summary>
    public static string Word(this RestrictionTag tag) => Sentences.Say($"restriction.{tag}");

    /// <summary>"full", "modified", "out".</summary>
    public static string Word(this AvailabilityState state) => Sentences.Say($"availability.{state}");

    /// <summary>"doctor", "physio or athletic therapist".</summary>
    public static string Word(this ReporterRole role) => Sentences.Say($"reporter.{role}");

    /// <summary>"in person", "by phone".</summary>
    public static string Word(this ReportedHow how) => Sentences.Say($"how.{how}");

    /// <summary>"national team", "school".</summary>
    public static string Word(this AbsenceKind kind) => Sentences.Say($"absence.{kind}");

    /// <summary>Each restriction in words, the cap last: "no jump", "at most 30 minutes".</summary>
    public static IEnumerable<string> InWords(this Restrictions restrictions) => restrictions.MostMinutes is { } most
        ? [.. restrictions.Tags.Select(Word), Sentences.Say("restriction.cap", most.Value)] : restrictions.Tags.Select(Word);
}
