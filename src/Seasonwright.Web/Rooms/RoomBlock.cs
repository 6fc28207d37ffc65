using Seasonwright.Core.Rooms;

namespace Seasonwright.Web.Rooms;

/// <summary>What is drawn of one session.</summary>
/// <param name="Clashes">What is wrong where it stands, in words.</param>
/// <param name="IsMoved">A proposal has put it here.</param>
public sealed record RoomBlock(RoomBooking Booking, RoomAsk Ask, RoomPlace At, int Lane, IReadOnlyList<string> Clashes, bool IsMoved)
{
    public int From => Clock.Minute(At.Start);

    public int To => Math.Min(Ask.End(At.Start), Clock.Day);
}
