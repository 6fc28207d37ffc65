using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read.Dates;
using Seasonwright.Documents.Read.Times;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>One of our matches while its questions are being asked.</summary>
internal sealed class FixtureDraft(ListedMatch listed, Sides sides, DateReading? date)
{
    public ListedMatch Listed => listed;

    public Sides Sides => sides;

    public int Line => listed.Line;

    /// <summary>The date's reading; null when the row has no readable one.</summary>
    public DateReading? Date => date;

    /// <summary>The cell of the opponent, before signs and formulas are judged.</summary>
    public string Written { get; set; } = "";

    public string? Opponent { get; set; }

    public string? Club { get; set; }

    public DateOnly? Day { get; set; } = date?.First;

    public DateOnly? LastDay { get; set; } = date?.Last;

    public TimeReading Time { get; private set; }

    public TimeOnly? KickOff { get; set; }

    public Venue? Venue { get; set; }

    public string? Place { get; set; }

    public string? Competition { get; set; }

    public string? Round { get; set; }

    public MatchStatus Status { get; set; }

    public ResultText? Result { get; set; }

    /// <summary>The list gives the other team's figure first.</summary>
    public bool IsTurned { get; init; }

    public string? Condition { get; set; }

    public string? SourceId => listed.SourceId.Length > 0 ? listed.SourceId : null;

    public List<string> Ask { get; } = listed.Ask.Length > 0 ? [listed.Ask] : [];

    /// <summary>What may hold words about the match's state.</summary>
    public IEnumerable<string> Texts => new[] { listed.Status, listed.KickOff, listed.Result, listed.Remarks, DateRest }.Concat(listed.Venues.Where(IsState)).Where(text => text.Length > 0);

    /// <summary>"postponed", "cancelled" where a place would stand.</summary>
    public static bool IsState(string cell) => ListWords.IsPostponed(cell) || ListWords.IsCancelled(cell);

    /// <summary>What stands beside the date in its cell.</summary>
    public string DateRest => listed.Date.Length == 0 ? "" : DateText.Find(listed.Date, months: true) is { } found ? DateText.Without(listed.Date, found) : listed.Date;

    /// <summary>What the questions about this match are about, the same in a later state of the list.</summary>
    public string Subject => string.Join('|', new[] { SourceId ?? "", Competition ?? "", Round ?? "", Opponent ?? "", Venue?.ToString() ?? "" }.Select(Spelling.Fold));

    public void TakeTime(string cell)
    {
        Time = TimeText.Read(cell);
        KickOff = Time.Time;
    }

    public void TakeResult(string cell) => Result = ResultText.Read(cell) is { } result ? IsTurned ? result.Turned : result : null;
}
