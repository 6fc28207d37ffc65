using System.Collections.Immutable;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Setups;

/// <summary>Every family of places a team's setup has. The names are part of the file format: add, never rename.</summary>
public static class SetupFacets
{
    public static readonly Facet<Only, string> TeamName = new("team.name");
    public static readonly Facet<QualityId, Quality> Quality = new("quality");
    public static readonly Facet<Only, UsualWeek> UsualWeek = new("usual.week");
    public static readonly Facet<Only, MatchLoad> MatchLoad = new("match.load");

    /// <summary>AU of a normal hard week, where the coach set it; else the usual week's.</summary>
    public static readonly Facet<Only, Load> ReferenceWeek = new("reference.week");
    public static readonly Facet<Only, LocaleSettings> Locale = new("locale");

    /// <summary>Only what differs from the rule's default.</summary>
    public static readonly Facet<RuleParameter, string> RuleParameter = new("rule");
    public static readonly Facet<TypicalWeekId, TypicalWeek> TypicalWeek = new("typical.week");

    /// <summary>The team's own, and its own way of those in the book.</summary>
    public static readonly Facet<ExerciseId, Exercise> Exercise = new("exercise");

    /// <summary>What the team has to lift with, where it said so.</summary>
    public static readonly Facet<Only, Gym> Gym = new("gym");

    /// <summary>Only of exercises whose maximum is worked out in the team's own way.</summary>
    public static readonly Facet<ExerciseId, Lift> Lift = new("lift");

    public static ImmutableArray<Facet> All { get; } = [TeamName, Quality, UsualWeek, MatchLoad, ReferenceWeek, Locale, RuleParameter, TypicalWeek, Exercise, Gym, Lift];
}
