using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk.Rooms;

namespace Seasonwright.Web.Rooms;

/// <summary>A move as the page sends it.</summary>
/// <param name="Season">Whose session it is.</param>
/// <param name="BasedOn">The log number of that season as the page showed it.</param>
/// <param name="Start">Null takes the session from the room.</param>
public sealed record RoomMoveText(string Season, string Session, long BasedOn, DateOnly? Day, string? Start)
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web);

    public static RoomMoveText Of(RoomMove move, RoomNow now) => new(move.Booking.Season.Text, move.Booking.Session.Id.Text, now.Numbers[move.Booking.Season], move.Place?.Day, move.Place is { } place ? Iso(place.Start) : null);

    public static string Of(IEnumerable<RoomMoveText> moves) => JsonSerializer.Serialize(moves, Options);

    public static JsonNode Node(RoomMoveText move) => JsonSerializer.SerializeToNode(move, Options)!;

    /// <returns>Null where the text is no list of moves.</returns>
    public static IReadOnlyList<RoomMoveText>? Read(JsonElement json)
    {
        try
        {
            return json.ValueKind == JsonValueKind.Array && json.Deserialize<List<RoomMoveText>>(Options) is { Count: > 0 } moves && moves.TrueForAll(move => move is { Season: not null, Session: not null } && move.Day is null == move.Start is null && (move.Start is null || move.Time is not null)) ? moves : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    public RoomPlace? Place => Day is { } day && Time is { } start ? new(day, start) : null;

    private TimeOnly? Time => TimeOfDay(Start);

    /// <summary>A time as the page writes it; null for anything else.</summary>
    public static TimeOnly? TimeOfDay(string? text) => TimeOnly.TryParseExact(text, "HH:mm", CultureInfo.InvariantCulture, DateTimeStyles.None, out var time) ? time : null;

    private static string Iso(TimeOnly time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);
}
