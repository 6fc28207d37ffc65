using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Spreadsheet;
using Seasonwright.Documents.Draw;
using Stylesheet = DocumentFormat.OpenXml.Spreadsheet.Stylesheet;

namespace Seasonwright.Documents.HandOut.Workbooks;

/// <summary>The file's table of looks: each look that occurs once, named by its place.</summary>
internal sealed class CellStyles
{
    private const string Family = "Arial";

    // Below this a number names a format every spreadsheet knows.
    private const uint FirstOwnFormat = 164;

    private readonly List<(CellLook Look, bool IsQuoted)> looks = [(new CellLook(IsBare: true), false)];
    private readonly List<Emphasised> emphasised = [];

    /// <param name="isQuoted">For a text that stays text when it is edited.</param>
    public uint Of(CellLook look, bool isQuoted)
    {
        var at = looks.IndexOf((look, isQuoted));
        if (at < 0)
        {
            at = looks.Count;
            looks.Add((look, isQuoted));
        }
        return (uint)at;
    }

    /// <summary>The place of the look that cells take on.</summary>
    public uint Of(Emphasised look)
    {
        emphasised.Add(look);
        return (uint)emphasised.Count - 1;
    }

    public Stylesheet Sheet()
    {
        var formats = looks.Select(look => look.Look.Format).OfType<string>().Distinct(StringComparer.Ordinal).ToList();
        var fonts = new NumberedOnce<Font>();
        var fills = new NumberedOnce<Fill>();
        var borders = new NumberedOnce<Border>();
        fills.Of(new Fill(new PatternFill { PatternType = PatternValues.None }));
        fills.Of(new Fill(new PatternFill { PatternType = PatternValues.Gray125 }));
        var cells = looks.Select(style => Cell(style.Look, style.IsQuoted, formats, fonts, fills, borders)).ToList();
        var sheet = new Stylesheet();
        if (formats.Count > 0)
            sheet.Append(new NumberingFormats(formats.Select((code, at) => new NumberingFormat { NumberFormatId = FirstOwnFormat + (uint)at, FormatCode = code })) { Count = (uint)formats.Count });
        sheet.Append(
            new Fonts(fonts.All) { Count = (uint)fonts.All.Count }, new Fills(fills.All) { Count = (uint)fills.All.Count }, new Borders(borders.All) { Count = (uint)borders.All.Count },
            new CellStyleFormats(new CellFormat { NumberFormatId = 0, FontId = 0, FillId = 0, BorderId = 0 }) { Count = 1 },
            new CellFormats(cells) { Count = (uint)cells.Count },
            new DocumentFormat.OpenXml.Spreadsheet.CellStyles(new CellStyle { Name = "Normal", FormatId = 0, BuiltinId = 0 }) { Count = 1 });
        if (emphasised.Count > 0)
            sheet.Append(new DifferentialFormats(emphasised.Select(Emphasis)) { Count = (uint)emphasised.Count });
        return sheet;
    }

    public static string Colour(Tint tint) => $"FF{tint.Light.ToString()[1..].ToUpperInvariant()}";

    private static CellFormat Cell(CellLook look, bool isQuoted, List<string> formats, NumberedOnce<Font> fonts, NumberedOnce<Fill> fills, NumberedOnce<Border> borders)
    {
        var font = new Font();
        if (look.IsBold) font.Append(new Bold());
        font.Append(new FontSize { Val = look.Size }, new Color { Rgb = Colour(look.Ink ?? Palette.Ink) }, new FontName { Val = Family });
        var fill = look.Fill is null ? new Fill(new PatternFill { PatternType = PatternValues.None })
            : new Fill(new PatternFill(new ForegroundColor { Rgb = Colour(look.Fill) }, new BackgroundColor { Indexed = 64 }) { PatternType = PatternValues.Solid });
        var cell = new CellFormat
        {
            NumberFormatId = look.Format is null ? 0 : FirstOwnFormat + (uint)formats.IndexOf(look.Format),
            FontId = fonts.Of(font),
            FillId = fills.Of(fill),
            BorderId = borders.Of(Edges(look)),
            FormatId = 0,
            ApplyNumberFormat = true,
            ApplyFont = true,
            ApplyFill = true,
            ApplyBorder = true,
            ApplyAlignment = true,
        };
        if (isQuoted) cell.QuotePrefix = true;
        cell.Append(new Alignment
        {
            Vertical = look.IsUpright || look.Fill == Palette.Chip ? VerticalAlignmentValues.Bottom : VerticalAlignmentValues.Center,
            Horizontal = look.Side switch { CellSide.Left => HorizontalAlignmentValues.Left, CellSide.Middle => HorizontalAlignmentValues.Center, _ => HorizontalAlignmentValues.General },
            WrapText = look.Wraps && !look.IsUpright,
            TextRotation = look.IsUpright ? 90u : 0u,
        });
        return cell;
    }

    private static Border Edges(CellLook look)
    {
        T Line<T>(Tint tint) where T : BorderPropertiesType, new() => new() { Style = BorderStyleValues.Thin, Color = new Color { Rgb = Colour(tint) } };
        return look.IsBare ? new Border(new LeftBorder(), new RightBorder(), new TopBorder(), new BottomBorder(), new DiagonalBorder())
            : look.Edge is { } edge ? new Border(Line<LeftBorder>(edge), Line<RightBorder>(edge), Line<TopBorder>(edge), Line<BottomBorder>(edge), new DiagonalBorder())
            : new Border(new LeftBorder(), new RightBorder(), new TopBorder(), Line<BottomBorder>(look.Fill == Palette.Chip ? Palette.Rule : Palette.Hairline), new DiagonalBorder());
    }

    private static DifferentialFormat Emphasis(Emphasised look)
    {
        var format = new DifferentialFormat();
        if (look.Ink is { } ink) format.Append(new Font(new Color { Rgb = Colour(ink) }));
        if (look.Fill is { } fill) format.Append(new Fill(new PatternFill(new BackgroundColor { Rgb = Colour(fill) })));
        if (look.LineAbove is { } line) format.Append(new Border(new TopBorder { Style = BorderStyleValues.Thin, Color = new Color { Rgb = Colour(line) } }));
        return format;
    }

    /// <summary>Elements that say the same, once, each with its number.</summary>
    private sealed class NumberedOnce<T> where T : OpenXmlElement
    {
        private readonly Dictionary<string, uint> numbers = new(StringComparer.Ordinal);

        public List<T> All { get; } = [];

        public uint Of(T element)
        {
            if (numbers.TryGetValue(element.OuterXml, out var number)) return number;
            All.Add(element);
            return numbers[element.OuterXml] = (uint)All.Count - 1;
        }
    }
}
