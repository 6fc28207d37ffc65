using System.Globalization;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;

namespace Seasonwright.Core.Rules;

/// <summary>Where in the season a finding is.</summary>
/// <param name="About">What it is about, see <see cref="FindingKey"/>.</param>
/// <param name="First">Number of the first week it touches.</param>
/// <param name="Last">Number of the last one.</param>
public readonly record struct Place(string About, int First, int Last)
{
    internal static Place Of(PlanWeek week) => Of(week, week);

    internal static Place Of(PlanWeek first, PlanWeek last) => new($"week/{first.Id}", first.Number, last.Number);

    /// <summary>Of one of the plan's matches, which all lie in its weeks.</summary>
    internal static Place Of(Plan plan, Match match)
    {
        var week = plan.WeekOf(match.Day!.Value)!.Number;
        return new($"match/{match.Id}", week, week);
    }

    internal static Place Of(Plan plan, Session session)
    {
        var week = plan.WeekOf(session.Day)!.Number;
        return new($"session/{session.Id}", week, week);
    }

    internal static Place Of(Plan plan, DateOnly first, DateOnly last) => new(string.Create(CultureInfo.InvariantCulture, $"day/{first:yyyy-MM-dd}"), plan.WeekOf(first)!.Number, plan.WeekOf(last)!.Number);

    /// <summary>Of a person in a week.</summary>
    internal static Place Of(Player player, PlanWeek week) => new($"player/{player.Id}", week.Number, week.Number);

    /// <summary>"12" or "12-15".</summary>
    public string Weeks => First == Last ? First.ToString(CultureInfo.InvariantCulture) : string.Create(CultureInfo.InvariantCulture, $"{First}-{Last}");

    /// <summary>Whether it stands for whole weeks, so that weeks side by side with one cause are one finding.</summary>
    internal bool IsWeeks => About.StartsWith("week/", StringComparison.Ordinal);

    /// <summary>Whether it is about a person.</summary>
    internal bool IsPlayer => IsOfPlayer(About);

    internal static bool IsOfPlayer(string about) => about.StartsWith("player/", StringComparison.Ordinal);

    /// <summary>Whole weeks touch whatever lies in them; of two that stand for less, a session or a day, one says nothing of the other.</summary>
    internal bool Touches(Place other) => First <= other.Last && other.First <= Last && (IsWeeks || other.IsWeeks || About == other.About);
}
