using Seasonwright.Core.Quantities;

namespace Seasonwright.Documents.Year;

/// <summary>How high a load stands in its track: what the page needs to read a drag.</summary>
/// <param name="Top">Per cent at the upper end, a multiple of 25.</param>
/// <param name="TopY">Where it stands, px from the track's top.</param>
/// <param name="ZeroY">Where 0 stands.</param>
public sealed record LoadScale(int Top, double TopY, double ZeroY)
{
    public double YOf(double percent) => ZeroY - (ZeroY - TopY) * percent / Top;

    /// <summary>The whole per cent under a height, 0 to <see cref="Top"/>.</summary>
    public Percent At(double y) => new((int)Math.Round(Math.Clamp((ZeroY - y) / (ZeroY - TopY), 0, 1) * Top, MidpointRounding.AwayFromZero));
}
