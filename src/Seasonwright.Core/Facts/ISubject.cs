namespace Seasonwright.Core.Facts;

/// <summary>What a key is about: an id, a date, or a pair of ids. Its text and its parse are each other's inverse.</summary>
public interface ISubject<TSelf>
    where TSelf : ISubject<TSelf>
{
    /// <exception cref="FormatException">The text is not such a subject.</exception>
    static abstract TSelf Parse(string text);
}
