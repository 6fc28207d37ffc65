namespace Seasonwright.Documents.Draw;

/// <summary>How much of a text survived fitting.</summary>
public enum FitKind
{
    /// <summary>Nothing fits; the text is empty and the layout must say it elsewhere (a label, a sentence).</summary>
    Nothing,
    /// <summary>The text itself.</summary>
    Whole,
    /// <summary>A shorter form of the ladder.</summary>
    Abbreviated,
    /// <summary>Cut and ended with an ellipsis.</summary>
    Shortened,
}

/// <summary>A text that fits, with its width in px at 1x (never above the room asked for).</summary>
public readonly record struct FittedText(string Text, double Width, FitKind Kind)
{
    public static FittedText Nothing { get; } = new("", 0, FitKind.Nothing);
}
