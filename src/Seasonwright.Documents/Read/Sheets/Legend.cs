using System.Text.RegularExpressions;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.Read.Workbooks;

namespace Seasonwright.Documents.Read.Sheets;

/// <summary>What a workbook says its marks and colours mean.</summary>
internal sealed class Legend
{
    private static readonly Regex Equal = new(@"^(?<mark>[^\s=]{1,12})\s*=\s*(?<meaning>[^=]+)$", RegexOptions.NonBacktracking | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture);

    private static readonly Regex Beside = new(@"^(?<mark>\S{1,2})\s+(?<meaning>[\p{L}][\p{L} -]*)$", RegexOptions.NonBacktracking | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture);

    private static readonly Dictionary<string, string> ColourWords = new(StringComparer.OrdinalIgnoreCase)
    {
        ["green"] = "green",
        ["grün"] = "green",
        ["gruen"] = "green",
        ["grøn"] = "green",
        ["grønn"] = "green",
        ["grön"] = "green",
        ["vert"] = "green",
        ["verde"] = "green",
        ["groen"] = "green",
        ["orange"] = "orange",
        ["oransje"] = "orange",
        ["naranja"] = "orange",
        ["oranje"] = "orange",
        ["arancione"] = "orange",
        ["grey"] = "grey",
        ["gray"] = "grey",
        ["grau"] = "grey",
        ["grå"] = "grey",
        ["gris"] = "grey",
        ["grijs"] = "grey",
        ["grigio"] = "grey",
        ["violet"] = "violet",
        ["purple"] = "violet",
        ["lila"] = "violet",
        ["violett"] = "violet",
        ["lilla"] = "violet",
        ["paars"] = "violet",
        ["viola"] = "violet",
        ["blue"] = "blue",
        ["blau"] = "blue",
        ["blå"] = "blue",
        ["bleu"] = "blue",
        ["azul"] = "blue",
        ["blauw"] = "blue",
        ["blu"] = "blue",
        ["red"] = "red",
        ["rot"] = "red",
        ["rød"] = "red",
        ["röd"] = "red",
        ["rouge"] = "red",
        ["rojo"] = "red",
        ["rood"] = "red",
        ["rosso"] = "red",
        ["yellow"] = "yellow",
        ["gelb"] = "yellow",
        ["gul"] = "yellow",
        ["jaune"] = "yellow",
        ["amarillo"] = "yellow",
        ["geel"] = "yellow",
        ["giallo"] = "yellow",
        ["pink"] = "pink",
        ["rosa"] = "pink",
        ["roze"] = "pink",
    };

    private readonly Dictionary<string, string> marks = new(StringComparer.OrdinalIgnoreCase);

    private readonly Dictionary<string, string> byHue = new(StringComparer.Ordinal);

    private readonly Dictionary<Rgb, string> fills = [];

    private readonly HashSet<(string Sheet, CellAt At)> swatches = [];

    /// <summary>Whether a cell's words stand beside a colour and say what it means.</summary>
    public bool IsBesideColour(Sheet sheet, CellAt at) => swatches.Contains((sheet.Name, at));

    public bool HasColours => fills.Count > 0 || byHue.Count > 0;

    /// <summary>What a mark stands for, or null.</summary>
    public string? this[string mark] => marks.GetValueOrDefault(mark);

    /// <summary>The mark itself, or what stands for it.</summary>
    public string Meaning(string mark) => marks.GetValueOrDefault(mark, mark);

    /// <summary>What a colour stands for: told by a cell of that colour with words beside it, or by the colour's name.</summary>
    public string? Of(Rgb fill) => fills.GetValueOrDefault(fill) ?? byHue.GetValueOrDefault(HueOf(fill));

    /// <summary>Takes in a line of words that explains marks ("H = home, @ = away"); false when it is none.</summary>
    public bool Take(string text)
    {
        var found = text.Split([",", ";", "   ", "  ", "\n", "\t"], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(part => Equal.Match(part)).Where(match => match.Success).Select(match => (Mark: match.Groups["mark"].Value, Meaning: match.Groups["meaning"].Value.Trim())).ToList();
        if (found.Count == 0)
        {
            var beside = text.Split(',').Select(part => Beside.Match(part.Trim())).ToList();
            if (beside.Count < 2 || beside.Any(match => !match.Success)) return false;
            found = beside.ConvertAll(match => (match.Groups["mark"].Value, match.Groups["meaning"].Value.Trim()));
        }
        foreach (var (mark, meaning) in found)
        {
            if (ColourWords.TryGetValue(mark, out var hue)) byHue.TryAdd(hue, meaning);
            else marks.TryAdd(mark, meaning);
        }
        return true;
    }

    /// <summary>A word with its meaning in the cell beside it.</summary>
    public void Take(string mark, string meaning) => marks.TryAdd(mark, meaning);

    /// <summary>An empty coloured cell with words in the cell right of it; false when it is none.</summary>
    public bool Take(Sheet sheet, SheetCell cell)
    {
        if (cell is not { IsEmpty: true, Fill: { } fill } || sheet[cell.Row, cell.Column + 1] is not { Value: CellValue.Words, Fill: null } words) return false;
        fills.TryAdd(fill, Spelling.Tidy(words.Text));
        swatches.Add((sheet.Name, words.At));
        return true;
    }

    // The names people give to colours: by hue in degrees, pale ones too; hardly any colour is grey.
    private static string HueOf(Rgb fill)
    {
        var (red, green, blue) = (fill.Red / 255.0, fill.Green / 255.0, fill.Blue / 255.0);
        var (most, least) = (Math.Max(red, Math.Max(green, blue)), Math.Min(red, Math.Min(green, blue)));
        if (most - least < 0.06) return "grey";
        var hue = 60 * (most == red ? (green - blue) / (most - least) % 6 : most == green ? 2 + (blue - red) / (most - least) : 4 + (red - green) / (most - least));
        if (hue < 0) hue += 360;
        return hue switch { < 18 => "red", < 46 => "orange", < 70 => "yellow", < 170 => "green", < 250 => "blue", < 300 => "violet", < 345 => "pink", _ => "red" };
    }
}
