namespace Seasonwright.Store;

/// <summary>
/// What is kept cannot be read or written just now. The message is a sentence for people: what happened, where, and how to mend it.
/// Whenever it is thrown, nothing that was acknowledged is lost and nothing was half written.
/// </summary>
public sealed class StoreTrouble(StoreTroubleKind kind, string subject, string sentence, Exception? cause = null)
    : Exception(sentence, cause)
{
    public StoreTroubleKind Kind { get; } = kind;

    /// <summary>The file or folder it is about.</summary>
    public string Subject { get; } = subject;

    /// <summary>Where the workspace that holds the folder can be opened; only with <see cref="StoreTroubleKind.InUse"/>, and null until it listens.</summary>
    public Uri? RunningAt { get; init; }
}
