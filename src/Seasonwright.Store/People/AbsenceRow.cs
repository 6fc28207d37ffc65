using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;
using Seasonwright.Store.Log;

namespace Seasonwright.Store.People;

/// <summary>An absence as the file has it; it goes with its athlete.</summary>
/// <param name="Apart">Days told apart, "2027-10-25 90x6.5;2027-10-26 240"; "" for none.</param>
/// <param name="Minutes">Of each other day, with <paramref name="Rpe"/>; where the load was told so.</param>
/// <param name="Au">Of each other day; where the load was told so.</param>
internal sealed record AbsenceRow(ClubId Club, Guid Id, string Person, string Kind, DateOnly First, DateOnly Last, int? Minutes, decimal? Rpe, int? Au, string Apart, DateTimeOffset Recorded)
{
    public static AbsenceRow Of(ClubId club, Absence absence) => new(club, absence.Id, absence.Person.Text, absence.Kind.ToString(), absence.Days.First, absence.Days.Last,
        absence.Loads.Others?.Minutes?.Value, absence.Loads.Others?.Rpe?.Value, absence.Loads.Others is { Minutes: null } load ? load.PerDay.Au : null,
        string.Join(';', absence.Loads.Apart.Select(apart => string.Create(CultureInfo.InvariantCulture, $"{apart.Day:O} {Text(apart.Load)}"))), absence.Recorded);

    /// <exception cref="FormatException">A value we never wrote.</exception>
    public Absence Value
    {
        get
        {
            try
            {
                var load = (Minutes, Rpe, Au) switch
                {
                    ({ } minutes, { } rpe, null) => OutsideLoad.Of(new Minutes(minutes), new Rpe(rpe)),
                    (null, null, { } au) => OutsideLoad.Of(new Load(au)),
                    (null, null, null) => null,
                    _ => throw new FormatException($"The load of the absence {Id} is told in two ways."),
                };
                var apart = Apart.Split(';', StringSplitOptions.RemoveEmptyEntries).Select(Day).ToValueList();
                return new(Id, new PersonId(Person), ListedWord.Read<AbsenceKind>(Kind), new(First, Last), new(load, apart), Recorded);
            }
            catch (Exception fault) when (fault is ArgumentException or OverflowException)
            {
                throw new FormatException($"The absence {Id} cannot be.", fault);
            }
        }
    }

    private static string Text(OutsideLoad load) => load.Minutes is { } minutes
        ? string.Create(CultureInfo.InvariantCulture, $"{minutes.Value}x{load.Rpe!.Value.Value}") : string.Create(CultureInfo.InvariantCulture, $"{load.PerDay.Au}");

    private static OutsideDay Day(string text)
    {
        if (text.Split(' ', 'x') is not [var day, var first, .. var rest] || rest.Length > 1) throw new FormatException($"'{text}' is no load of a day.");
        var amount = int.Parse(first, NumberStyles.None, CultureInfo.InvariantCulture);
        return new(DateOnly.ParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture), rest is [var rpe]
            ? OutsideLoad.Of(new Minutes(amount), new Rpe(decimal.Parse(rpe, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture))) : OutsideLoad.Of(new Load(amount)));
    }
}
