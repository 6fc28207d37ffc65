namespace Seasonwright.Documents.Read.Workbooks;

/// <summary>Notes at cells. A thread of comments keeps a note with its text beside it, for older programs; that note is what is read.</summary>
internal static class Comments
{
    public static Dictionary<CellAt, string> Read(Parts parts, string sheetPart, string sheet)
    {
        var comments = new Dictionary<CellAt, string>();
        if (Links.Of(parts, sheetPart).Kind("comments") is not { } part || parts.Find(part) is not { } bytes) return comments;
        using var xml = new Part(part, bytes, sheet);
        var authors = new HashSet<string>(StringComparer.Ordinal);
        while (xml.Read())
        {
            if (xml.IsStart && xml.Element == "author") authors.Add(xml.Text().Trim());
            if (!xml.IsStart || xml.Element != "comment") continue;
            if (!CellAt.TryParse(xml["ref"], out var at)) throw xml.Trouble("workbook-off-sheet", xml["ref"]);
            xml.At = at;
            var text = Escapes.Undone(xml.Text(skips: inner => inner == "rPh")).Trim();
            if (text.Length > 0) comments[at] = Bare(text, authors);
        }
        return comments;
    }

    // "[Threaded comment] ... Comment: text" and "Author: text", as programs write them.
    private static string Bare(string text, HashSet<string> authors)
    {
        if (text.StartsWith("[Threaded comment]", StringComparison.Ordinal) && text.IndexOf("Comment:", StringComparison.Ordinal) is var at and > 0) return text[(at + "Comment:".Length)..].Trim();
        var end = text.IndexOf(':', StringComparison.Ordinal);
        return end > 0 && authors.Contains(text[..end].Trim()) ? text[(end + 1)..].Trim() : text;
    }
}
