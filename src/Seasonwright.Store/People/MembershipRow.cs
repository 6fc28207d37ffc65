using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Calendar;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;
using Seasonwright.Store.Log;

namespace Seasonwright.Store.People;

/// <summary>A membership as the file has it; it goes with its athlete and with its team.</summary>
/// <param name="Squad">"" for the team's main squad.</param>
/// <param name="LeadDates">Runs of days, "2027-10-26..2027-10-28", set apart by a space.</param>
internal sealed record MembershipRow(ClubId Club, string Person, StreamId Team, string Squad, DateOnly From, DateOnly? To, string LeadWeekdays, string LeadDates)
{
    public static MembershipRow Of(ClubId club, StreamId team, Membership membership) => new(club, membership.Person.Text, team, membership.Squad ?? "", membership.From, membership.To,
        string.Join(' ', membership.Leads.Weekdays), string.Join(' ', membership.Leads.Dates.Select(span => string.Create(CultureInfo.InvariantCulture, $"{span.First:O}..{span.Last:O}"))));

    /// <exception cref="FormatException">A value we never wrote.</exception>
    public Membership Value => To < From ? throw new FormatException("A membership that ends before it starts.")
        : new(new PersonId(Person), new TeamId(Team.ToString()), From, To, new(
            LeadWeekdays.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(ListedWord.Read<DayOfWeek>).ToValueList(),
            LeadDates.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Span).ToValueList()), Squad.Length == 0 ? null : Squad);

    private static DaySpan Span(string text) => text.Split("..") is [var first, var last] && Day(first) is var from && Day(last) is var to && from <= to
        ? new(from, to) : throw new FormatException($"'{text}' is no run of days.");

    private static DateOnly Day(string text) => DateOnly.ParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture);
}
