using Seasonwright.Core;

namespace Seasonwright.Documents.Draw;

/// <summary>
/// How a mark or text is painted, by meaning. The name is the CSS class; a painter for paper reads the same members.
/// </summary>
/// <param name="Name">Class name: lower-case letters and dashes.</param>
/// <param name="On">
/// The grounds it may stand on, each of which it must contrast with. Empty for what carries no meaning by itself:
/// grounds and hairlines.
/// </param>
public abstract record Look(string Name, ValueList<Tint> On);

/// <summary>The look of a mark.</summary>
/// <param name="Name">See <see cref="Look"/>.</param>
/// <param name="On">See <see cref="Look"/>.</param>
/// <param name="Fill">Null is hollow.</param>
/// <param name="Stroke">Null is no edge; where there is one, it is what must contrast with the ground.</param>
/// <param name="StrokeWidth">px at 1x; 0 without a stroke.</param>
/// <param name="Dash">Length of dash and gap in px at 1x; null is a whole line.</param>
public sealed record MarkLook(
    string Name, ValueList<Tint> On, Tint? Fill, Tint? Stroke = null, double StrokeWidth = 0, double? Dash = null)
    : Look(Name, On)
{
    /// <summary>The colour that sets the mark off from its ground; null only for what has neither fill nor stroke.</summary>
    public Tint? Outline => Stroke ?? Fill;
}

/// <summary>The look of a text: its colour; size and weight come with the text.</summary>
public sealed record TextLook(string Name, ValueList<Tint> On, Tint Fill) : Look(Name, On);
