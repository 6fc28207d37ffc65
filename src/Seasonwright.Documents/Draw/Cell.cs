namespace Seasonwright.Documents.Draw;

/// <summary>Which span of time a cell stands for: a whole week or one day of it.</summary>
/// <param name="Week">Place of the week in the season, from 0.</param>
/// <param name="Day">Null stands for the whole week.</param>
public readonly record struct CellSpan(int Week, DateOnly? Day = null);

/// <summary>An unseen field of a track: what the pointer hits, the cursor stands on and a screen reader says.</summary>
/// <param name="Area">Where, in the track.</param>
/// <param name="Span">Its week or day.</param>
/// <param name="Label">A sentence, for instance "Week 15, 11 to 17 October, competition, 92 per cent, one home match"; cleaned on birth.</param>
public sealed record Cell(Area Area, CellSpan Span, string Label)
{
    public string Label { get; } = PlainText.Clean(Label);
}
