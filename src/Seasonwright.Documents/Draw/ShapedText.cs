using System.Collections.Immutable;

namespace Seasonwright.Documents.Draw;

/// <summary>One line of text as the font's glyphs.</summary>
/// <param name="Glyphs">From left to right.</param>
/// <param name="Advance">Width of the line in font units.</param>
public sealed record ShapedText(ImmutableArray<PlacedGlyph> Glyphs, int Advance);

/// <summary>A glyph of a shaped line.</summary>
/// <param name="Id">Number in the font file; 0 is the box for a character the font lacks.</param>
/// <param name="TextByte">Where the characters it stands for begin, in bytes of the text's UTF-8.</param>
/// <param name="X">Font units from the line's start.</param>
/// <param name="Y">Font units above the baseline.</param>
public readonly record struct PlacedGlyph(ushort Id, int TextByte, int X, int Y);
