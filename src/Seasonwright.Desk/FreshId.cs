namespace Seasonwright.Desk;

/// <summary>New ids for what people make by hand: version-7 GUIDs, which sort by the time they were made.</summary>
public static class FreshId
{
    public static string Text() => Guid.CreateVersion7().ToString("N");
}
