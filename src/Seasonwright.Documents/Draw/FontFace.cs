using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Runtime.InteropServices;
using HarfBuzzSharp;
using HarfBuzzBuffer = HarfBuzzSharp.Buffer;

namespace Seasonwright.Documents.Draw;

/// <summary>
/// A font file ready for shaping. Widths are those a browser gives the same file with
/// <c>font-variant-numeric: tabular-nums</c>: kerning, ligatures and contextual forms on, every digit equally wide.
/// Safe for concurrent use: the HarfBuzz font is immutable, each shaping has its own buffer.
/// </summary>
[SuppressMessage("Design", "CA1001", Justification = "The few shared faces live as long as the process.")]
public sealed class FontFace
{
    /// <summary>
    /// What a character the font lacks is charged, in em. Another font will draw it, whose width nobody here knows;
    /// this is chosen wide (colour emoji are the widest in use, about 1.3 em; from memory, no source).
    /// </summary>
    public const double MissingGlyphEm = 1.3;

    private const int MissingGlyph = 0;
    private const int RememberedTexts = 20_000;

    private static readonly Feature[] TabularFigures = [new(new Tag('t', 'n', 'u', 'm'), 1)];
    // Fixed, because HarfBuzz would otherwise ask the process's locale.
    private static readonly Language ShapingLanguage = new("en");
    private static readonly ConcurrentDictionary<FontWeight, Lazy<FontFace>> Faces = new();

    // HarfBuzz reads these for as long as the face lives: pinned, because Blob.FromStream lets the collector move them.
    private readonly byte[] bytes;
    private readonly Font font;
    private ConcurrentDictionary<string, int> advances = new(StringComparer.Ordinal);
    private int remembered;

    private FontFace(FontFile file)
    {
        using var stream = file.Open();
        bytes = GC.AllocateUninitializedArray<byte>(checked((int)stream.Length), pinned: true);
        stream.ReadExactly(bytes);
        using var blob = new Blob(Marshal.UnsafeAddrOfPinnedArrayElement(bytes, 0), bytes.Length, MemoryMode.ReadOnly);
        blob.MakeImmutable();
        using var face = new Face(blob, 0);
        UnitsPerEm = face.UnitsPerEm;
        face.MakeImmutable();
        font = new Font(face);
        font.SetScale(UnitsPerEm, UnitsPerEm);
        font.SetFunctionsOpenType();
    }

    /// <summary>Font units in one em.</summary>
    public int UnitsPerEm { get; }

    /// <summary>The one shared face of a weight, loaded when first asked for.</summary>
    public static FontFace Of(FontWeight weight) =>
        Faces.GetOrAdd(weight, static w => new Lazy<FontFace>(() => new FontFace(FontFile.Of(w)))).Value;

    /// <summary>Width of one line of text in font units, after shaping. Remembered per text.</summary>
    public int Advance(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var known = advances;
        if (known.TryGetValue(text, out var advance))
            return advance;
        advance = Shape(text).Advance;
        if (known.TryAdd(text, advance) && Interlocked.Increment(ref remembered) > RememberedTexts)
        {
            // A server runs for months and meets endless names: begin the memory anew rather than let it grow.
            advances = new(StringComparer.Ordinal);
            Interlocked.Exchange(ref remembered, 0);
        }
        return advance;
    }

    /// <summary>One line of text as glyphs of the file, for a painter that sets them one by one.</summary>
    public ShapedText Shape(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length == 0)
            return new([], 0);
        using var buffer = new HarfBuzzBuffer();
        buffer.AddUtf8(text);
        buffer.GuessSegmentProperties();
        buffer.Language = ShapingLanguage;
        font.Shape(buffer, TabularFigures);

        var infos = buffer.GetGlyphInfoSpan();
        var places = buffer.GetGlyphPositionSpan();
        var missing = (int)Math.Ceiling(MissingGlyphEm * UnitsPerEm);
        var glyphs = ImmutableArray.CreateBuilder<PlacedGlyph>(infos.Length);
        var sum = 0;
        for (var i = 0; i < infos.Length; i++)
        {
            glyphs.Add(new((ushort)infos[i].Codepoint, (int)infos[i].Cluster, sum + places[i].XOffset, places[i].YOffset));
            sum += infos[i].Codepoint == MissingGlyph ? missing : places[i].XAdvance;
        }
        return new(glyphs.MoveToImmutable(), sum);
    }
}
