namespace Seasonwright.Documents.Read.Fixtures;

/// <summary>What a column of a fixture list holds.</summary>
public enum ColumnRole
{
    /// <summary>The list's own number or UID of a match, the same in every state of the list.</summary>
    SourceId,
    Round,
    Date,
    Weekday,
    KickOff,

    /// <summary>The team at home; with <see cref="Away"/> the list names both teams.</summary>
    Home,
    Away,

    /// <summary>The other team, in one team's own list.</summary>
    Opponent,

    /// <summary>Both teams in one cell, or the opponent with a mark.</summary>
    Match,

    /// <summary>Home or away marks, a place, or both ("Vale Hall (home)").</summary>
    Venue,
    Competition,
    Status,
    Result,
    Remarks,

    /// <summary>Which of the club's teams plays.</summary>
    Team,
}

/// <summary>A column and what it is taken for, for the preview.</summary>
/// <param name="Column">From 0.</param>
/// <param name="Heading">As written.</param>
/// <param name="Role">Null: the column is not read. The answer <see cref="Key"/> with a role's name, or <see cref="Unread"/>, changes it.</param>
public sealed record HeadingUse(int Column, string Heading, ColumnRole? Role)
{
    /// <summary>The answer for a column that is not to be read.</summary>
    public const string Unread = "none";

    /// <summary>What an answer about this column is filed under, in every list with this heading.</summary>
    public string Key => KeyOf(Heading);

    internal static string KeyOf(string heading) => $"column:{Spelling.Fold(heading)}";
}
