using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Rules.OfWeek;

/// <summary>Hard sets per muscle or movement pattern per week; block emphasis.</summary>
internal static class WeeklySetsRange
{
    public static readonly Figure DevMin = Figure.Number("dev_min", 10, FigureUnit.Count);
    public static readonly Figure DevMax = Figure.Number("dev_max", 20, FigureUnit.Count);
    public static readonly Figure StrMin = Figure.Number("str_min", 4, FigureUnit.Count);
    public static readonly Figure StrMax = Figure.Number("str_max", 12, FigureUnit.Count);
    public static readonly Figure KeepMin = Figure.Number("keep_min", 2, FigureUnit.Count);
    public static readonly Figure IndirectWeight = Figure.Number("indirect_weight", 0.5m, FigureUnit.Count);

    public static Rule Rule { get; } = new("weekly-sets-range")
    {
        Scope = RuleScope.Week,
        Highest = Severity.Caution,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.Schoenfeld2017, Sources.BazValle2022, Sources.Spiering2021],
        Figures = [DevMin, DevMax, StrMin, StrMax, KeepMin, IndirectWeight],
        Needs = Needs.Exercises,
        Looks = Looks,
    };

    private static readonly (QualityKind Kind, Figure Least, string Code)[] Developed = [(QualityKind.Hypertrophy, DevMin, "few-muscle"), (QualityKind.MaximumStrength, StrMin, "few-strength")];

    /// <summary>
    /// Sets are known in all and not by pattern. In all fewer than one pattern wants are too few, whichever patterns they are of; too
    /// many waits for exercises.
    /// </summary>
    private static IEnumerable<Look> Looks(Plan plan, Figures figures) => plan.Athletes.Looks(athlete =>
        from week in plan.Weeks
        where week.IsTraining && week.HasEmphasis
        from look in Looks(plan, athlete, week, figures)
        select look);

    private static IEnumerable<Look> Looks(Plan plan, AthleteDays athlete, PlanWeek week, Figures figures)
    {
        foreach (var (kind, develop, code) in Developed)
        {
            var level = week.Exposures(kind);
            if (level == 0) continue;
            var place = Place.Of(week);
            if (!week.HasOurs)
            {
                yield return new TooLittle(place, "missing.sessions");
                continue;
            }
            var isKept = level < (int)Emphasis.Develop;
            var figure = isKept ? KeepMin : develop;
            var sessions = athlete.Between(week.Days.First, week.Days.Last).Where(session => SessionContent.Gives(session, plan.Setup, kind)).ToList();
            var sets = sessions.Select(session => SessionContent.Sets(session, plan.Setup, kind)).ToList();
            if (sets.Contains(null)) yield return new TooLittle(place, "missing.doses");
            else if (sets.Sum() is { } sum && sum >= figures.Number(figure)) yield return new Fine(place);
            else
            {
                yield return new Breach(place, isKept ? "few-keep" : code, Severity.Caution, sets.Sum()!.Value, figures.Number(figure))
                {
                    Numbers = [sets.Sum(), figures.Number(figure)],
                    Figure = figure.Name,
                    Remedy = More(plan, sessions, kind, (int)Math.Ceiling(figures.Number(figure)) - sets.Sum()!.Value),
                };
            }
        }
    }

    /// <summary>So many more in the first session of ours that has any.</summary>
    private static ValueList<SeasonEdit> More(Plan plan, List<Session> sessions, QualityKind kind, int more) =>
        sessions.Find(session => session.IsOurs && !session.IsLocked) is { } session && session.Doses!.First(dose => SessionContent.KindOf(dose, plan.Setup) == kind) is var chosen && chosen.Sets + more <= Dose.MostSets
            ? [new SetSession(session with { Doses = session.Doses!.Select(dose => dose == chosen ? dose with { Sets = dose.Sets + more } : dose).ToValueList() })] : [];
}
