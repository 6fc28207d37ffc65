using System.Text;
using System.Text.Json;
using Seasonwright.Core;
using Seasonwright.Core.Rooms;

namespace Seasonwright.Wire;

/// <summary>A room file: one room's week, what each team asks for and where it stands. Readable JSON, the same bytes for the same week.</summary>
public static class RoomFile
{
    public const string Format = "seasonwright-room";
    public const int Version = 1;

    /// <summary>A full week has a tenth of it.</summary>
    public const int MostBytes = 4 << 20;

    private sealed record Form(string Format, int Version, DateOnly First, Room Room, ValueList<RoomTeam> Teams);

    public static string Write(RoomWeek week) => JsonSerializer.Serialize(new Form(Format, Version, week.First, week.Room, week.Teams), WireOptions.Readable) + "\n";

    /// <summary>Reads a room file. Never throws on content.</summary>
    /// <returns>The week, or what is wrong, where, and how to mend it.</returns>
    public static RoomWeek? Read(ReadOnlySpan<byte> bytes, out WireProblem? problem)
    {
        if (bytes.StartsWith(Encoding.UTF8.Preamble)) bytes = bytes[Encoding.UTF8.Preamble.Length..];
        try
        {
            problem = FileHead.Foreign(bytes, Format, Version, MostBytes, "file.other-room", "mend.other-room");
            if (problem is not null) return null;
            var form = JsonSerializer.Deserialize<Form>(bytes, WireOptions.Readable)!;
            var week = new RoomWeek(form.First, form.Room, form.Teams);
            if (RoomSound.Of(week).FirstOrDefault() is not { Field: { } field, Sentence: var sentence }) return week;
            problem = new WireProblem(null, null, Sentences.Say("field", field) + sentence, Sentences.Say("mend.room")) { Field = field, Finding = sentence };
            return null;
        }
        catch (JsonException error)
        {
            problem = WireProblem.Of(error, bytes);
            return null;
        }
    }
}
