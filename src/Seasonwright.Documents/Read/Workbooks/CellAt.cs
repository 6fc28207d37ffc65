using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Seasonwright.Documents.Read.Workbooks;

/// <summary>A cell's place on its sheet.</summary>
/// <param name="Row">1 is the first, at most <see cref="LastRow"/>.</param>
/// <param name="Column">1 is column A, at most <see cref="LastColumn"/>.</param>
public readonly record struct CellAt(int Row, int Column) : IComparable<CellAt>
{
    /// <summary>The last row a sheet can have (ISO/IEC 29500, and every spreadsheet program).</summary>
    public const int LastRow = 1_048_576;

    /// <summary>Column XFD.</summary>
    public const int LastColumn = 16_384;

    public bool IsOnSheet => Row is >= 1 and <= LastRow && Column is >= 1 and <= LastColumn;

    /// <summary>Reads "C20" or "$C$20". Anything else, and what lies beyond the sheet's bounds, is false.</summary>
    public static bool TryParse([NotNullWhen(true)] string? name, out CellAt at)
    {
        at = default;
        var (row, column, i) = (0, 0, 0);
        if (name is null or { Length: > 12 }) return false;
        if (i < name.Length && name[i] == '$') i++;
        for (; i < name.Length && char.IsAsciiLetter(name[i]) && column <= LastColumn; i++) column = column * 26 + (name[i] | 0x20) - 'a' + 1;
        if (i < name.Length && name[i] == '$') i++;
        for (; i < name.Length && char.IsAsciiDigit(name[i]) && row <= LastRow; i++) row = row * 10 + name[i] - '0';
        at = new(row, column);
        return i == name.Length && at.IsOnSheet;
    }

    /// <summary>1 is A, 27 is AA.</summary>
    public static string ColumnName(int column)
    {
        var name = "";
        for (; column > 0; column = (column - 1) / 26) name = (char)('A' + (column - 1) % 26) + name;
        return name;
    }

    /// <summary>By rows, then by columns.</summary>
    public int CompareTo(CellAt other) => Row != other.Row ? Row.CompareTo(other.Row) : Column.CompareTo(other.Column);

    /// <summary>For instance "C20".</summary>
    public override string ToString() => ColumnName(Column) + Row.ToString(CultureInfo.InvariantCulture);
}
