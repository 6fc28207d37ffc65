namespace Seasonwright.Documents.Read.Workbooks;

/// <summary>The parts that one part names. Those outside the file are never followed.</summary>
internal sealed class Links
{
    private readonly Dictionary<string, (string Kind, string Target)> byId = new(StringComparer.Ordinal);

    private Links()
    {
    }

    /// <param name="part">The naming part; empty for the file itself.</param>
    public static Links Of(Parts parts, string part)
    {
        var links = new Links();
        var (folder, name) = (part[..(part.LastIndexOf('/') + 1)], part[(part.LastIndexOf('/') + 1)..]);
        var own = $"{folder}_rels/{name}.rels";
        if (parts.Find(own) is not { } bytes) return links;
        using var xml = new Part(own, bytes);
        while (xml.Read())
        {
            if (xml.IsStart && xml.Element == "Relationship" && xml["Id"] is { } id && xml["Type"] is { } type && xml["Target"] is { } target && xml["TargetMode"] != "External")
                links.byId[id] = (type[(type.LastIndexOf('/') + 1)..], Whole(folder, target));
        }
        return links;
    }

    public (string Kind, string Target)? Find(string id) => byId.TryGetValue(id, out var link) ? link : null;

    /// <summary>The first part of a kind, for instance "styles".</summary>
    public string? Kind(string kind) => byId.Values.FirstOrDefault(link => link.Kind == kind).Target;

    // "../comments1.xml" seen from "xl/worksheets/" is "xl/comments1.xml".
    private static string Whole(string folder, string target)
    {
        if (target.StartsWith('/')) return target.TrimStart('/');
        var path = new List<string>();
        foreach (var step in (folder + target).Split('/', StringSplitOptions.RemoveEmptyEntries))
        {
            if (step == ".." && path.Count > 0) path.RemoveAt(path.Count - 1);
            else if (step is not ("." or "..")) path.Add(step);
        }
        return string.Join('/', path);
    }
}
