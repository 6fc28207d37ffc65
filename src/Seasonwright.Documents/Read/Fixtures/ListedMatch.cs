using Seasonwright.Documents.Read.Dates;

namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>A match as a list writes it, cell by cell, before anything is decided. Empty texts stand for what is not there.</summary>
internal sealed record ListedMatch(int Line, string Raw)
{
    public string SourceId { get; init; } = "";

    public string Date { get; init; } = "";

    /// <summary>The weekday of a column of its own, or in front of a time.</summary>
    public string Weekday { get; init; } = "";

    public string KickOff { get; init; } = "";

    public string Home { get; init; } = "";

    public string Away { get; init; } = "";

    public string Opponent { get; init; } = "";

    /// <summary>A cell that may hold both teams.</summary>
    public string Pair { get; init; } = "";

    /// <summary>Cells with a home or away mark, a place, or both.</summary>
    public string[] Venues { get; init; } = [];

    public string Competition { get; init; } = "";

    public string Round { get; init; } = "";

    public string Status { get; init; } = "";

    public string Result { get; init; } = "";

    /// <summary>Cells that may be the kick-off or the result.</summary>
    public FigureCell[] Figures { get; init; } = [];

    public string Remarks { get; init; } = "";

    /// <summary>Words beside the match that say nothing of its state, because the list has another place for that.</summary>
    public string Notes { get; init; } = "";

    /// <summary>All remarks, one by one.</summary>
    public IEnumerable<string> Beside => $"{Remarks}; {Notes}".Split("; ", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    public string Team { get; init; } = "";

    /// <summary>The club's team that a row of its own above names.</summary>
    public string Squad { get; init; } = "";

    /// <summary>The date of the heading above, for rows without one.</summary>
    public WrittenDate? SectionDate { get; init; }

    /// <summary>The heading above, which holds <see cref="SectionDate"/>.</summary>
    public string Section { get; init; } = "";

    /// <summary>Id of an open question about this row alone; empty where there is none.</summary>
    public string Ask { get; init; } = "";

    /// <summary>"Bye: Harbour Vale": whose bye it is.</summary>
    public string ByeOf { get; init; } = "";
}
