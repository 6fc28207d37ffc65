using Seasonwright.Core.Setups;
using Seasonwright.Documents.Draw;

namespace Seasonwright.Documents.HandOut.Workbooks;

/// <summary>The looks of a team's cells: days in its order.</summary>
internal sealed class SheetLooks(LocaleSettings locale)
{
    public static CellLook Title { get; } = new(IsBold: true, IsBare: true, Size: 14);
    public static CellLook Quiet { get; } = new(Ink: Palette.Muted, IsBare: true);
    public static CellLook Heading { get; } = new(Fill: Palette.Chip, IsBold: true, Wraps: true, Side: CellSide.Left, Size: 9);
    public static CellLook Upright { get; } = Heading with { IsUpright = true, Side = CellSide.Middle };
    public static CellLook Text { get; } = new();
    public static CellLook Wrapped { get; } = new(Wraps: true);
    public static CellLook Strong { get; } = new(IsBold: true, Wraps: true);
    public static CellLook Number { get; } = new();

    /// <summary>A number or nothing: 0 is not shown.</summary>
    public static CellLook Count { get; } = new("0;-0;;@", Side: CellSide.Middle);
    public static CellLook Percent { get; } = new("0%");
    public static CellLook Bar { get; } = new(Ink: Palette.LoadDone, Side: CellSide.Left, Size: 6);
    public static CellLook Au { get; } = new("#,##0");
    public static CellLook Time { get; } = new("hh:mm", Side: CellSide.Middle);
    public static CellLook Month { get; } = new("mmm yyyy", Side: CellSide.Left);

    /// <summary>The end of a week, its year told by the month beside it.</summary>
    public CellLook Day { get; } = new(locale.DateOrder switch
    {
        DateOrder.MonthDayYear => "mmm d",
        DateOrder.YearMonthDay => "mm-dd",
        _ => "d mmm",
    }, Side: CellSide.Left);

    public CellLook LongDay { get; } = new(locale.DateOrder switch
    {
        DateOrder.MonthDayYear => "ddd mmm d, yyyy",
        DateOrder.YearMonthDay => "ddd yyyy-mm-dd",
        _ => "ddd d mmm yyyy",
    }, Side: CellSide.Left);

    /// <summary>The one cell that is meant to be changed.</summary>
    public CellLook Input => LongDay with { Format = LongDay.Format!["ddd ".Length..], Side = CellSide.Middle, Fill = Palette.CautionGround, Ink = Palette.CautionInk, Edge = Palette.CautionEdge };
}
