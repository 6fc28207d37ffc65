using System.Collections.Immutable;
using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;
using Seasonwright.Desk.Squad;
using Seasonwright.Documents;
using Seasonwright.Web.Seasons;

namespace Seasonwright.Web.Squad;

/// <summary>A player as typed.</summary>
/// <param name="Positions">Set apart by commas or strokes, the first one first.</param>
/// <param name="IsAnother">Of two people of one name.</param>
/// <param name="Mass">Today, in <paramref name="Unit"/>.</param>
public sealed record AthleteForm(string Family, string Given, string Number, string Positions, string Born, string Training, string Mass, string Unit, string From, string To, string Second, ImmutableHashSet<DayOfWeek> Leads, bool IsAnother = false)
{
    public static AthleteForm Empty(DateOnly from, bool pounds) => new("", "", "", "", "", "", "", pounds ? nameof(BodyMassUnit.Pound) : nameof(BodyMassUnit.Kilogram), from.Iso(), "", "", []);

    public static AthleteForm Of(Player player, TeamId team, DateOnly today, bool pounds)
    {
        var (main, second) = (player.MainIn(team), player.Memberships.FirstOrDefault(one => one.Team == team && one.Squad is not null));
        var athlete = player.Athlete;
        // Stones come with a list only; they are shown, and a new mass is typed in one unit.
        var mass = WeighIn.LastOn(player.Weighings, today)?.Mass is { Unit: not BodyMassUnit.Stone } known ? known : null;
        return new(athlete.Family, athlete.Given, athlete.Number ?? "", string.Join(", ", athlete.Positions), athlete.Born?.Iso() ?? "",
            athlete.Training?.YearsOn(today).ToString(CultureInfo.InvariantCulture) ?? "", mass?.Amount.ToString("0.###", CultureInfo.InvariantCulture) ?? "",
            mass?.Unit.ToString() ?? (pounds ? nameof(BodyMassUnit.Pound) : nameof(BodyMassUnit.Kilogram)),
            (main ?? second)?.From.Iso() ?? "", (main ?? second)?.To?.Iso() ?? "", second?.Squad ?? "", [.. second?.Leads.Weekdays ?? []]);
    }

    internal static AthleteForm Read(Posted posted) => new(posted["family"], posted["given"], posted["number"], posted["positions"], posted["born"], posted["training"], posted["mass"], posted["unit"],
        posted["joined"], posted["until"], posted["second"], [.. Enum.GetValues<DayOfWeek>().Where(day => posted[$"lead-{day}"].Length > 0)], posted["another"].Length > 0);

    /// <summary>What cannot be read, by field; what cannot be is the desk's to say.</summary>
    public ImmutableSortedDictionary<string, string> Problems()
    {
        var wrong = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (var (field, text) in new[] { ("born", Born), ("to", To) })
            if (text.Length > 0 && StartForm.DayOf(text) is null) wrong[field] = Words.Say("new.day-unread", text);
        if (StartForm.DayOf(From) is null) wrong["from"] = Words.Say(From.Length == 0 ? "new.day-missing" : "new.day-unread", From);
        if (Training.Length > 0 && Years is null) wrong["training"] = Words.Say("squad.training-unread", TrainingAge.Most);
        if (Mass.Length > 0 && BodyMass is null) wrong["mass"] = Words.Say("squad.mass-wrong", Core.Squad.BodyMass.Least, Core.Squad.BodyMass.Most);
        return wrong.ToImmutable();
    }

    /// <summary>What is to be kept; ask <see cref="Problems"/> first.</summary>
    public AthleteDraft Draft(PersonId? id) => new(id, Family, Given, Number, Positions.Split([',', '/', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).ToValueList(),
        StartForm.DayOf(Born), Years, BodyMass, StartForm.DayOf(From)!.Value, StartForm.DayOf(To), Second, Leads.Order().ToValueList(), IsAnother);

    private int? Years => int.TryParse(Training, NumberStyles.None, CultureInfo.InvariantCulture, out var years) ? years : null;

    private BodyMass? BodyMass
    {
        get
        {
            if (!decimal.TryParse(Mass.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var amount) || amount > 10_000) return null;
            if (!Enum.TryParse<BodyMassUnit>(Unit, out var unit) || unit is not (BodyMassUnit.Kilogram or BodyMassUnit.Pound)) return null;
            try
            {
                return new BodyMass(amount, unit);
            }
            catch (ArgumentOutOfRangeException)
            {
                return null;
            }
        }
    }
}
