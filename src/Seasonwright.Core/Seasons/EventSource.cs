namespace Seasonwright.Core.Seasons;

/// <summary>The list an event or test day came from. A season has several lists of events: the school's, the federation's, the club's.</summary>
/// <param name="List">The list's name when it was first read.</param>
/// <param name="Entry">What the list calls it; the coach may have given it another name.</param>
/// <param name="Vanished">A later state of the list no longer holds it. It is marked, never deleted.</param>
/// <param name="Listed">What the list last said; null where the entry stands as listed.</param>
public sealed record EventSource(string List, string Entry, bool Vanished = false, EventListing? Listed = null)
{
    /// <summary>The source of an entry that stands as <paramref name="stands"/>, of which the list has said <paramref name="said"/>.</summary>
    internal EventSource Saying(EventListing said, EventListing stands) => this with { Listed = said == stands ? null : said };
}
