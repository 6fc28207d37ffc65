using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules;

/// <summary>A place of the plan that goes against a rule: one for each cause and run of weeks.</summary>
/// <param name="Sentence">What was found, with the value and the limit.</param>
/// <param name="Value">What was found, in the unit of the figure; the worst of a run of weeks.</param>
/// <param name="Limit">What it should not pass.</param>
/// <param name="Figure">Name of the figure that is the limit; empty where no single one is.</param>
/// <param name="Size">How far beyond the first limit of its kind, the places of a run together: whatever makes a finding worse makes it larger.</param>
/// <param name="Worst">How far beyond the first limit its worst place is.</param>
/// <param name="IsForced">Matches and events alone bring it about, whatever is painted.</param>
/// <param name="Remedy">Edits that mend it; empty where none is known.</param>
/// <param name="Times">How many places of the run go against the rule, 1 and more.</param>
/// <param name="Figures">The rule's figures in force, in one line.</param>
public sealed record Finding(
    Rule Rule, string Code, Place Place, Severity Severity, string Sentence, decimal Value, decimal Limit, string Figure, decimal Size, decimal Worst, bool IsForced,
    ValueList<SeasonEdit> Remedy, int Times, string Figures)
{
    public FindingKey Key => new(Rule.Id, Code, Place.About);

    /// <summary>How far beyond the limit as a share of it.</summary>
    internal decimal Weight => Breach.WeightOf(Value, Limit);

    /// <summary>Whether what was accepted covers it: nowhere worse, by the same figures, and for a stop by someone who may release it.</summary>
    public bool IsCoveredBy(Acceptance acceptance) =>
        Size <= acceptance.Size && Worst <= (acceptance.Worst ?? acceptance.Size) && Severity <= (acceptance.Severity ?? Severity.Stop) && acceptance.Figures == Figures
        && (Severity < Severity.Stop || acceptance is { Releaser: not null, Role: { } role } && Rule.Releasers.Contains(role));

    /// <summary>The season after its remedy; null where none is known or one of its edits is refused, a week being locked for instance.</summary>
    public Season? Mend(Season season)
    {
        if (Remedy.Count == 0) return null;
        foreach (var edit in Remedy)
        {
            if (Decider.Decide(season, edit) is not Accepted accepted) return null;
            season = season.With(accepted.Step);
        }
        return season;
    }

    /// <summary>Who may release it, in words: "doctor, management".</summary>
    public string ReleasersInWords => string.Join(", ", Rule.Releasers.Select(role => Sentences.Say($"staff.{role}")));

    /// <summary>The edit that accepts it as it is now.</summary>
    public AcceptFinding Accept(string reason, string? releaser = null, StaffRole? role = null) =>
        new(Key, AcceptedFor(new Acceptance(reason, Size, Figures, releaser, role)));

    /// <summary>An acceptance that says what was accepted as the rulebook finds it now, whatever it said of that before.</summary>
    internal Acceptance AcceptedFor(Acceptance reason) => reason with { Size = Size, Worst = Worst, Severity = Severity, Figures = Figures };
}
