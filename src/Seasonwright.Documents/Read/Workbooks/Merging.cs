namespace Seasonwright.Documents.Read.Workbooks;

/// <summary>Merged areas of a sheet: none overlaps another, and there are no more than anybody merges by hand.</summary>
internal static class Merging
{
    private const int MostAreas = 2_000;

    public static void Add(string sheet, List<CellArea> merges, CellArea area)
    {
        if (area.First != area.Last) merges.Add(area);
        if (merges.Count > MostAreas) throw new WorkbookTrouble("workbook-merges", sheet, area.First, MostAreas);
    }

    public static void Check(string sheet, List<CellArea> merges)
    {
        merges.Sort((one, other) => one.First.CompareTo(other.First));
        for (var i = 0; i < merges.Count; i++)
        {
            for (var j = i + 1; j < merges.Count && merges[j].First.Row <= merges[i].Last.Row; j++)
            {
                if (merges[i].Overlaps(merges[j])) throw new WorkbookTrouble("workbook-overlap", sheet, merges[j].First, merges[i], merges[j]);
            }
        }
    }
}
