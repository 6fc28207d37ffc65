using System.Globalization;
using Seasonwright.Core.Seasons;

namespace Seasonwright.Core.Squad;

/// <summary>A player. Names are rows outside the log; nothing in it tells of health.</summary>
/// <param name="Family">Family name; empty where none is known.</param>
/// <param name="Given">Given names; empty where none is known.</param>
/// <param name="Number">On the shirt as written, for instance "7", "0", "4/5".</param>
/// <param name="Positions">As written, the first one first.</param>
/// <param name="Born">Date of birth; null where it is not known.</param>
/// <param name="Training">How long the person has trained; null where it is not known.</param>
public sealed record Athlete(PersonId Id, string Family, string Given, string? Number, ValueList<string> Positions, DateOnly? Born, TrainingAge? Training)
{
    /// <summary>Below it, cautions of their own hold: the age at which most laws end childhood.</summary>
    public const int GrownUp = 18;

    /// <summary>"Given Family".</summary>
    public string Name => $"{Given} {Family}".Trim();

    /// <summary>Squads are listed by it: "4/5" stands with 4, who has none comes last.</summary>
    public int Shirt => int.TryParse(new string([.. (Number ?? "").TakeWhile(char.IsAsciiDigit)]), NumberStyles.None, CultureInfo.InvariantCulture, out var known) ? known : int.MaxValue;

    /// <summary>Whole years on a day; null where the date of birth is not known or lies after the day. Who was born on 29 February has their day on 1 March of other years.</summary>
    public int? AgeOn(DateOnly day)
    {
        if (Born is not { } born || born > day) return null;
        var years = day.Year - born.Year;
        return (day.Month, day.Day).CompareTo((born.Month, born.Day)) < 0 ? years - 1 : years;
    }

    /// <summary>Whether the person is known to be under <see cref="GrownUp"/> on a day.</summary>
    public bool IsMinorOn(DateOnly day) => AgeOn(day) < GrownUp;
}
