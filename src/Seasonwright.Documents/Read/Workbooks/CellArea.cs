namespace Seasonwright.Documents.Read.Workbooks;

/// <summary>A rectangle of cells, both corners in it.</summary>
public readonly record struct CellArea(CellAt First, CellAt Last)
{
    public int Rows => Last.Row - First.Row + 1;

    public int Columns => Last.Column - First.Column + 1;

    public bool Contains(CellAt at) => at.Row >= First.Row && at.Row <= Last.Row && at.Column >= First.Column && at.Column <= Last.Column;

    public bool Overlaps(CellArea other) => First.Row <= other.Last.Row && other.First.Row <= Last.Row && First.Column <= other.Last.Column && other.First.Column <= Last.Column;

    /// <summary>Reads "C5:F6", or "C5" as an area of one cell. Corners the wrong way round, or off the sheet, are false.</summary>
    public static bool TryParse(string? name, out CellArea area)
    {
        area = default;
        var corners = name?.Split(':') ?? [];
        if (corners.Length is not (1 or 2) || !CellAt.TryParse(corners[0], out var first) || !CellAt.TryParse(corners[^1], out var last)) return false;
        area = new(first, last);
        return last.Row >= first.Row && last.Column >= first.Column;
    }

    public override string ToString() => First == Last ? $"{First}" : $"{First}:{Last}";
}
