using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfSeason;

/// <summary>Last official match date; blocks with kind=transition; next preparation start.</summary>
internal static class TransitionLength
{
    public static readonly Figure MinDays = Figure.Number("min_days", 14, FigureUnit.Days);
    public static readonly Figure MaxDays = Figure.Number("max_days", 28, FigureUnit.Days);
    public static readonly Figure HardMaxDays = Figure.Number("hard_max_days", 35, FigureUnit.Days);
    public static readonly Figure Preset = Figure.Choice("preset", "none", "fifa_2025", "fifpro_2025");
    public static readonly Figure PresetMinDaysFifa2025 = Figure.Number("preset_min_days.fifa_2025", 21, FigureUnit.Days);
    public static readonly Figure PresetMinDaysFifpro2025 = Figure.Number("preset_min_days.fifpro_2025", 28, FigureUnit.Days);

    public static Rule Rule { get; } = new("transition-length")
    {
        Scope = RuleScope.Season,
        Highest = Severity.Warning,
        Evidence = Evidence.ExpertOpinion,
        Status = SourceStatus.PartlyConfirmed,
        Sources = [Sources.BompaSummary, Sources.Fifa2025, Sources.Fifpro2025, Sources.Silva2016],
        Figures = [MinDays, MaxDays, HardMaxDays, Preset, PresetMinDaysFifa2025, PresetMinDaysFifpro2025, Figure.PresetDate],
        Rising = [[MinDays, MaxDays, HardMaxDays]],
        Looks = Looks,
    };

    private static IEnumerable<Look> Looks(Plan plan, Figures figures)
    {
        if (plan.Official.LastOrDefault() is not { } last || plan.WeekOf(last.Day!.Value) is not { } lastWeek) yield break;
        var after = plan.Weeks.Where(week => week.Number > lastWeek.Number).ToList();
        var whole = after.Count > 0 ? Place.Of(after[0], after[^1]) : Place.Of(lastWeek);
        if (!plan.HasPhases && after.All(week => week.Kind is null))
        {
            yield return new TooLittle(whole, "missing.phases");
            yield break;
        }

        // Up to the next preparation: a season may run on into the next one. A week's own kind goes before its phase.
        var transition = after.TakeWhile(week => week.IsTransition || week.Phase?.Phase.Kind is not PhaseKind.GeneralPreparation).Where(week => week.IsInTransition).ToList();
        var days = transition.Sum(week => week.Days.Length);
        var shortest = figures.Preset(Preset, last.Day.Value) is { } body ? Rule.Figures.Single(figure => figure.Name == $"preset_min_days.{body}") : MinDays;
        var least = figures.Number(shortest);
        var place = transition.Count > 0 ? Place.Of(transition[0], transition[^1]) : whole;
        if (days == 0 && least > 0)
        {
            yield return new Breach(place, "missing", Severity.Warning, 0, least)
            {
                Numbers = [least],
                // A season that ends so soon after its last match has no place for more.
                IsForced = after.Count == 0,
                Remedy = after.Count > 0 ? [new SetWeekKind(after[0].Id, after[Math.Min(after.Count, (int)Math.Ceiling(least / 7)) - 1].Id, WeekKind.Transition)] : [],
            };
        }
        else if (days < least) yield return new Breach(place, "short", Severity.Caution, days, least) { Numbers = [days, least], Figure = shortest.Name, IsForced = after.TrueForAll(week => week.IsInTransition) };
        else if (days > figures.Number(MaxDays))
        {
            var hard = days > figures.Number(HardMaxDays);
            yield return new Breach(place, "long", hard ? Severity.Warning : Severity.Caution, days, figures.Number(hard ? HardMaxDays : MaxDays))
            {
                Numbers = [days, figures.Number(MaxDays)],
                Figure = (hard ? HardMaxDays : MaxDays).Name,
                Beyond = days - figures.Number(MaxDays),
                // The season was given that long: what follows is the next one's.
                IsForced = after.TrueForAll(week => week.IsInTransition),
            };
        }
        else yield return new Fine(place);
    }
}
