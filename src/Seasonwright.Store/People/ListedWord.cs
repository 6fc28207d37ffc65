namespace Seasonwright.Store.People;

/// <summary>Closed lists by the names of their values, as the file has them.</summary>
internal static class ListedWord
{
    /// <exception cref="FormatException">The list has no such value.</exception>
    public static T Read<T>(string text)
        where T : struct, Enum => Enum.TryParse<T>(text, out var value) && Enum.IsDefined(value) && value.ToString() == text ? value : throw new FormatException($"'{text}' is no {typeof(T).Name}.");
}
