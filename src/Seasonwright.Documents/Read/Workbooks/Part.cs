using System.Text;
using System.Xml;

namespace Seasonwright.Documents.Read.Workbooks;

/// <summary>
/// One XML part, read once from front to back. Document types and entities are refused, and so are tags or texts longer and elements
/// deeper than any workbook has: a parser would hold them whole.
/// </summary>
internal sealed class Part : IDisposable
{
    // A text of the greatest length, every character written as an entity of 6 bytes, and its tags.
    private const int LongestStretch = 6 * Workbook.LongestText + 4096;

    private const int Deepest = 64;

    private readonly XmlReader reader;
    private readonly string name;
    private readonly string? sheet;
    private readonly StringBuilder text = new();
    private readonly char[] chunk = new char[4096];

    /// <param name="name">The part's, for messages.</param>
    /// <param name="sheet">The sheet it is part of, for messages.</param>
    public Part(string name, byte[] bytes, string? sheet = null)
    {
        (this.name, this.sheet) = (name, sheet);
        var since = 0;
        foreach (var one in bytes)
        {
            since = one == (byte)'<' ? 0 : since + 1;
            if (since > LongestStretch) throw new WorkbookTrouble("workbook-stretch", sheet, null, name, LongestStretch);
        }
        reader = XmlReader.Create(new MemoryStream(bytes, writable: false), new XmlReaderSettings
        {
            DtdProcessing = DtdProcessing.Prohibit,
            XmlResolver = null,
            IgnoreComments = true,
            IgnoreProcessingInstructions = true,
            CloseInput = true,
        });
    }

    /// <summary>The cell being read, for messages.</summary>
    public CellAt? At { get; set; }

    /// <summary>The element's name without its namespace: strict and usual workbooks differ only in those.</summary>
    public string Element => reader.LocalName;

    public bool IsStart => reader.NodeType == XmlNodeType.Element;

    public bool IsEmptyElement => reader.IsEmptyElement;

    public int Depth => reader.Depth;

    /// <summary>The next node, or false at the end.</summary>
    public bool Read() => Soundly(() =>
    {
        if (!reader.Read()) return false;
        return reader.Depth <= Deepest ? true : throw new WorkbookTrouble("workbook-deep", sheet, At, name, Deepest);
    });

    /// <summary>Every start of an element until the end of the one stood on; its own start is not among them.</summary>
    public IEnumerable<string> Inside()
    {
        if (reader.IsEmptyElement) yield break;
        var depth = reader.Depth;
        while (Read() && reader.Depth > depth)
        {
            if (IsStart) yield return reader.LocalName;
        }
    }

    /// <summary>An attribute of the element stood on, by its name without namespace.</summary>
    public string? this[string attribute]
    {
        get
        {
            if (reader.GetAttribute(attribute) is { } plain) return plain;
            string? found = null;
            if (!reader.HasAttributes) return found;
            while (found is null && reader.MoveToNextAttribute())
            {
                if (reader.LocalName == attribute && reader.Prefix.Length > 0) found = reader.Value;
            }
            reader.MoveToElement();
            return found;
        }
    }

    public bool Flag(string attribute) => this[attribute] is "1" or "true" or "on";

    public int? Whole(string attribute) => int.TryParse(this[attribute], System.Globalization.NumberStyles.Integer, System.Globalization.CultureInfo.InvariantCulture, out var whole) ? whole : null;

    /// <summary>The characters inside the element stood on, those of inner elements too; longer than a cell can be is refused.</summary>
    public string Text(Func<string, bool>? skips = null)
    {
        text.Clear();
        if (reader.IsEmptyElement) return "";
        var depth = reader.Depth;
        int? skipped = null;
        while (Read() && reader.Depth > depth)
        {
            if (skipped is { } from && reader.Depth > from) continue;
            skipped = IsStart && skips?.Invoke(reader.LocalName) == true && !reader.IsEmptyElement ? reader.Depth : null;
            if (reader.NodeType is XmlNodeType.Text or XmlNodeType.CDATA or XmlNodeType.SignificantWhitespace or XmlNodeType.Whitespace) Append();
        }
        return text.ToString();
    }

    public void Dispose() => reader.Dispose();

    public WorkbookTrouble Trouble(string id, params object?[] values) => new(id, sheet, At, values);

    private void Append() => Soundly(() =>
    {
        for (int count; (count = reader.ReadValueChunk(chunk, 0, chunk.Length)) > 0;)
        {
            text.Append(chunk, 0, count);
            if (text.Length > Workbook.LongestText) throw new WorkbookTrouble("workbook-text-long", sheet, At, Workbook.LongestText);
        }
        return true;
    });

    private bool Soundly(Func<bool> read)
    {
        try
        {
            return read();
        }
        catch (Exception e) when (e is XmlException or ArgumentException or InvalidOperationException)
        {
            throw new WorkbookTrouble("workbook-part", sheet, At, name);
        }
    }
}
