namespace Seasonwright.Store;

/// <summary>Why what is kept cannot be read or written.</summary>
public enum StoreTroubleKind
{
    /// <summary>Another process holds the data folder.</summary>
    InUse,

    /// <summary>The file or folder may be read but not written.</summary>
    ReadOnly,

    /// <summary>No room left on the disk.</summary>
    DiskFull,

    /// <summary>The disk reported an error that is not lack of room.</summary>
    DiskError,

    /// <summary>The file is no SQLite database, or one of another program.</summary>
    NotOurs,

    /// <summary>The database was written by a newer Seasonwright.</summary>
    Newer,

    /// <summary>The database's own check finds it damaged.</summary>
    Damaged,

    /// <summary>Another program locked the database for longer than the waiting time.</summary>
    Busy,

    /// <summary>The file or folder is missing, is of the wrong kind or cannot be opened.</summary>
    Unreachable,
}
