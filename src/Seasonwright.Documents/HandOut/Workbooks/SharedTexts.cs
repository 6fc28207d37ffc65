using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Spreadsheet;

namespace Seasonwright.Documents.HandOut.Workbooks;

/// <summary>The texts of a file, each once, named by its place.</summary>
internal sealed class SharedTexts
{
    private readonly Dictionary<string, int> places = new(StringComparer.Ordinal);
    private int uses;

    /// <param name="text">As the file holds it.</param>
    public int Of(string text)
    {
        uses++;
        if (!places.TryGetValue(text, out var place)) places.Add(text, place = places.Count);
        return place;
    }

    public SharedStringTable Table() => new(places.OrderBy(text => text.Value).Select(text => new SharedStringItem(new Text(text.Key) { Space = SpaceProcessingModeValues.Preserve })))
    {
        Count = (uint)uses,
        UniqueCount = (uint)places.Count,
    };
}
