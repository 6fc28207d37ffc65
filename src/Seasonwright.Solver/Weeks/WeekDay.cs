using Seasonwright.Core.Calendar;

namespace Seasonwright.Solver;

/// <summary>A day of a week as the week stage reads it.</summary>
/// <param name="Index">0 is the week's first day.</param>
/// <param name="Around">Where it lies between the matches, of the weeks beside too. Every possible day of a match whose day is open counts as one.</param>
/// <param name="MatchAu">What its matches load.</param>
/// <param name="Left">Share of training that events leave of it, 0 to 130 %.</param>
/// <param name="IsPast">Before the day from which is planned: what was done is a fact.</param>
/// <param name="IsOpen">A match may be played on it that may also be played on another.</param>
/// <param name="IsTestDay">Something is tested on it, whether or not a session stands for it.</param>
public sealed record WeekDay(int Index, DateOnly Date, MatchDay Around, int MatchAu, int Left = 100, bool IsPast = false, WeekTravel Travel = WeekTravel.None, bool IsOpen = false, bool IsTestDay = false)
{
    public bool IsMatch => Around.ToNext == 0;

    public bool IsClosed => Left == 0;

    /// <summary>A long journey takes it, before or after a night.</summary>
    public bool IsTravel => Travel is WeekTravel.Long or WeekTravel.Arrival;

    /// <summary>Neither a match, nor a long journey, nor a test takes it.</summary>
    public bool CanBeFree => !IsMatch && !IsTravel && !IsTestDay;

    /// <summary>Days to the next match; far away where none follows.</summary>
    public int ToNext => Around.ToNext ?? Far;

    /// <summary>Days since the last match; far away where none came before.</summary>
    public int SinceLast => Around.SinceLast ?? Far;

    private const int Far = 1000;
}
