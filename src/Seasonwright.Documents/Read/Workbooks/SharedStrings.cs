namespace Seasonwright.Documents.Read.Workbooks;

/// <summary>Texts that cells share. Rich text is joined; readings for another script are left out.</summary>
internal static class SharedStrings
{
    public static List<string> Read(Parts parts, string? part)
    {
        var strings = new List<string>();
        if (part is null || parts.Find(part) is not { } bytes) return strings;
        using var xml = new Part(part, bytes);
        while (xml.Read())
        {
            if (xml.IsStart && xml.Element == "si") strings.Add(Escapes.Undone(xml.Text(skips: inner => inner == "rPh")));
        }
        return strings;
    }
}
