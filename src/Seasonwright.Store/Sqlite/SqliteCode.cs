namespace Seasonwright.Store.Sqlite;

/// <summary>SQLite's primary result codes that we tell apart. Source: sqlite.org, "Result and Error Codes".</summary>
internal static class SqliteCode
{
    public const int Error = 1;
    public const int Busy = 5;
    public const int Locked = 6;
    public const int ReadOnly = 8;
    public const int InputOutput = 10;
    public const int Corrupt = 11;
    public const int Full = 13;
    public const int CannotOpen = 14;
    public const int Constraint = 19;
    public const int NotADatabase = 26;
}
