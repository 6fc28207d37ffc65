using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Rules.OfWeek;

/// <summary>Minutes tagged full_contact, controlled_contact, live_set_piece per athlete; days holding full contact; match day.</summary>
internal static class ContactMinutesPreset
{
    public static readonly Figure Preset = Figure.Choice("preset", "off", "rugby_2021");
    public static readonly Figure Rugby2021FullMin = Figure.Number("rugby_2021.full_min", 15, FigureUnit.Minutes);
    public static readonly Figure Rugby2021FullDays = Figure.Number("rugby_2021.full_days", 2, FigureUnit.Days);
    public static readonly Figure Rugby2021ControlledMin = Figure.Number("rugby_2021.controlled_min", 40, FigureUnit.Minutes);
    public static readonly Figure Rugby2021SetpieceMin = Figure.Number("rugby_2021.setpiece_min", 30, FigureUnit.Minutes);
    public static readonly Figure Rugby2021ForbidDays = Figure.Words("rugby_2021.forbid_days", "MD+1", "MD+2", "MD-1");
    public static readonly Figure Rugby2021ContactFreeDays = Figure.Number("rugby_2021.contact_free_days", 1, FigureUnit.Days);

    public static Rule Rule { get; } = new("contact-minutes-preset")
    {
        Scope = RuleScope.Week,
        Highest = Severity.Warning,
        Evidence = Evidence.Moderate,
        Status = SourceStatus.WithWorkingDefault,
        Sources = [Sources.WorldRugby2021, Sources.Starling2023],
        Figures = [Preset, Rugby2021FullMin, Rugby2021FullDays, Rugby2021ControlledMin, Rugby2021SetpieceMin, Rugby2021ForbidDays, Rugby2021ContactFreeDays, Figure.PresetDate],
        Needs = Needs.Sessions,
        OnlyBy = Preset,
    };
}
