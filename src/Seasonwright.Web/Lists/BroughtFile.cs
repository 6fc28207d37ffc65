namespace Seasonwright.Web.Lists;

/// <summary>A file that a form keeps while it is asked about: not in the box, where what it tells of health would stand, nor in the browser's store.</summary>
internal sealed record BroughtFile(string Name, byte[] Bytes)
{
    /// <summary>As the form keeps it.</summary>
    public string Text => Convert.ToBase64String(Bytes);

    /// <returns>Null where the form keeps none, or something else.</returns>
    public static BroughtFile? Kept(string name, string text)
    {
        var bytes = new byte[text.Length / 4 * 3];
        return name.Length > 0 && Convert.TryFromBase64String(text, bytes, out var length) && length > 0 ? new(name, bytes[..length]) : null;
    }
}
