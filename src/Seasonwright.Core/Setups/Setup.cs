using System.Collections.Immutable;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Setups;

/// <summary>What a team sets once for all its seasons: qualities, usual and typical weeks, match load, exercises, locale, rule parameters. Immutable.</summary>
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

    /// <summary>The book's with the team's own, which stand in the place of the book's of the same id. By pattern and name.</summary>
    public ImmutableArray<Exercise> Exercises =>
    [
        .. ExerciseBook.All.Where(exercise => Facts.Find(SetupFacets.Exercise, exercise.Id) is null).Concat(Facts.All(SetupFacets.Exercise).Select(own => own.Value))
            .OrderBy(exercise => exercise.Pattern).ThenBy(exercise => exercise.Name, StringComparer.OrdinalIgnoreCase).ThenBy(exercise => exercise.Id.Text, StringComparer.Ordinal),
    ];

    /// <summary>The team's own of this id, else the book's; null where nobody has one any more.</summary>
    public Exercise? Exercise(ExerciseId id) => Facts.Find(SetupFacets.Exercise, id) ?? ExerciseBook.Find(id);

    /// <summary>What there is to lift with; as common gyms have it where nobody said.</summary>
    public Gym Gym => Facts.Find(SetupFacets.Gym, default) ?? Gym.Usual(Locale.MassUnit);

    public Lift Lift(ExerciseId exercise) => Facts.Find(SetupFacets.Lift, exercise) ?? Setups.Lift.Usual;

    public LocaleSettings Locale => Facts.Find(SetupFacets.Locale, default) ?? new LocaleSettings();

    public string? RuleParameter(RuleParameter parameter) => Facts.Find(SetupFacets.RuleParameter, parameter);

    public Setup With(Step step) => new(Id, Facts.Evolve(step));

    public bool Equals(Setup? other) => other is not null && Id == other.Id && Facts.Equals(other.Facts);

    public override bool Equals(object? obj) => Equals(obj as Setup);

    public override int GetHashCode() => HashCode.Combine(Id, Facts);
}
