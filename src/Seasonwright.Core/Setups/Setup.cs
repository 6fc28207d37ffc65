using System.Collections.Immutable;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Setups;

/// <summary>What a team sets once for all its seasons: qualities, usual and typical weeks, match load, locale, rule parameters. Immutable.</summary>
public sealed class Setup(TeamId id, FactSet facts) : IEquatable<Setup>
{
    private readonly ImmutableArray<Quality> qualities = facts.All(SetupFacets.Quality).Any()
        ? [.. facts.All(SetupFacets.Quality).Select(q => q.Value).OrderBy(q => q.Place).ThenBy(q => q.Id.Text, StringComparer.Ordinal)]
        : [.. Quality.Defaults];

    public static Setup Empty(TeamId id) => new(id, FactSet.Empty);

    public TeamId Id { get; } = id;

    public FactSet Facts { get; } = facts;

    public string TeamName => Facts.Find(SetupFacets.TeamName, default) ?? "";

    public ImmutableArray<Quality> Qualities => qualities;

    /// <summary>What the team calls a quality; one it plans no longer has the name a team starts with, if any.</summary>
    public string NameOf(QualityId quality) =>
        Qualities.Concat(Quality.Defaults).FirstOrDefault(q => q.Id == quality)?.Name ?? Sentences.Say("quality.gone");

    public UsualWeek UsualWeek => Facts.Find(SetupFacets.UsualWeek, default) ?? UsualWeek.Default;

    public MatchLoad MatchLoad => Facts.Find(SetupFacets.MatchLoad, default) ?? MatchLoad.Default;

    /// <summary>100 % on the load scale: this squad's normal hard week, never 0 AU.</summary>
    public Load ReferenceWeek => Facts.FindValue(SetupFacets.ReferenceWeek, default) is { Au: > 0 } set ? set
        : UsualWeek.Load is { Au: > 0 } usual ? usual
        : UsualWeek.Default.Load;

    /// <summary>By name.</summary>
    public IEnumerable<TypicalWeek> TypicalWeeks => Facts.All(SetupFacets.TypicalWeek).Select(week => week.Value).OrderBy(week => week.Name, StringComparer.OrdinalIgnoreCase).ThenBy(week => week.Id.Text, StringComparer.Ordinal);

    public LocaleSettings Locale => Facts.Find(SetupFacets.Locale, default) ?? new LocaleSettings();

    public string? RuleParameter(RuleParameter parameter) => Facts.Find(SetupFacets.RuleParameter, parameter);

    public Setup With(Step step) => new(Id, Facts.Evolve(step));

    public bool Equals(Setup? other) => other is not null && Id == other.Id && Facts.Equals(other.Facts);

    public override bool Equals(object? obj) => Equals(obj as Setup);

    public override int GetHashCode() => HashCode.Combine(Id, Facts);
}
