using System.Collections.Immutable;
using System.Globalization;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Squad;
using Seasonwright.Documents;
using Seasonwright.Web.Seasons;

namespace Seasonwright.Web.Squad;

/// <summary>A report of availability as typed.</summary>
/// <param name="State">"" while none is chosen.</param>
/// <param name="Cap">Most minutes a day; "" for no cap.</param>
/// <param name="Who">A value of <see cref="WhoReports"/>; "" while none is chosen.</param>
/// <param name="Name">Of a reporter who is not on the staff.</param>
internal sealed record ReportForm(string State, ImmutableHashSet<RestrictionTag> Tags, string Cap, string Who, string Name, string How, string From, string Review)
{
    /// <summary>Days until a restriction is asked about again where nobody said otherwise. Common practice, no source.</summary>
    private const int UsualReview = 7;

    /// <summary>Longest cap in minutes: longer ones restrict nothing.</summary>
    private const int MostMinutes = 300;

    /// <summary>Begins from what stands, so that who tightens only adds.</summary>
    public static ReportForm Offered(Standing standing) => new(
        standing.Availability.State == AvailabilityState.Full ? "" : standing.Availability.State.ToString(), [.. standing.Availability.Restrictions.Tags],
        standing.Availability.Restrictions.MostMinutes?.Value.ToString(CultureInfo.InvariantCulture) ?? "", "", "", nameof(ReportedHow.Message), standing.Day.Iso(), standing.Day.AddDays(UsualReview).Iso());

    public static ReportForm Read(Posted posted) => new(posted["state"], [.. Enum.GetValues<RestrictionTag>().Where(tag => posted[$"tag-{tag}"].Length > 0)],
        posted["cap"], posted["who"], posted["name"], posted["how"], posted["from"], posted["review"]);

    /// <summary>What is wrong, by field.</summary>
    public ImmutableSortedDictionary<string, string> Problems(IReadOnlyList<WhoReports> known)
    {
        var wrong = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        if (!Enum.TryParse<AvailabilityState>(State, out var state) || !Enum.IsDefined(state)) wrong["state"] = Words.Say("squad.state-missing");
        else if (state == AvailabilityState.Full && (Tags.Count > 0 || Cap.Length > 0)) wrong["state"] = Words.Say("squad.full-restricted");
        else if (state == AvailabilityState.Modified && new Restrictions(Tags).LeavesNothing) wrong["tags"] = Words.Say("squad.leaves-nothing");
        if (Cap.Length > 0 && Minutes is null) wrong["cap"] = Words.Say("squad.cap-wrong", MostMinutes);
        var who = known.FirstOrDefault(one => one.Value == Who);
        if (who is null) wrong["who"] = Words.Say("squad.who-missing");
        else if (who.Name is not null && Name.Length > 0 && Name != who.Name) wrong["name"] = Words.Say("squad.two-names", who.Name);
        if (Name.Length > Reporter.LongestName) wrong["name"] = Words.Say("new.long", Name.Length, Reporter.LongestName);
        if (!Enum.TryParse<ReportedHow>(How, out var how) || !Enum.IsDefined(how)) wrong["how"] = Words.Say("squad.how-missing");
        if (StartForm.DayOf(From) is null) wrong["from"] = Words.Say(From.Length == 0 ? "new.day-missing" : "new.day-unread", From);
        if (Review.Length > 0 && StartForm.DayOf(Review) is null) wrong["review"] = Words.Say("new.day-unread", Review);
        return wrong.ToImmutable();
    }

    /// <summary>What is reported; ask <see cref="Problems"/> first.</summary>
    public Availability Availability => Enum.Parse<AvailabilityState>(State) switch
    {
        AvailabilityState.Full => Availability.Full,
        AvailabilityState.Out => Availability.Out,
        _ => Availability.Modified(new(Tags, Minutes)),
    };

    private Minutes? Minutes => int.TryParse(Cap, NumberStyles.None, CultureInfo.InvariantCulture, out var minutes) && minutes is >= 1 and <= MostMinutes ? new Minutes(minutes) : null;
}
