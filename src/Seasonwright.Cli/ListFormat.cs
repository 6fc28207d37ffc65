namespace Seasonwright.Cli;

/// <summary>The forms in which a list that was read is given.</summary>
internal enum ListFormat
{
    /// <summary>For people.</summary>
    Table,

    /// <summary>The rows, for spreadsheets and scripts.</summary>
    Csv,

    /// <summary>Everything, for scripts.</summary>
    Json,
}
