using System.Collections.Immutable;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Seasonwright.Store.Log;

namespace Seasonwright.Bench.Kill;

/// <summary>The gestures of a seed: gesture <c>i</c> is always the same, so a second process can send them again and a third can check them.</summary>
public sealed class Gestures(int seed)
{
    public StreamId Team { get; } = new(IdOf(seed, "team"));

    public StreamId Season { get; } = new(IdOf(seed, "season"));

    public Guid Id(int gesture) => IdOf(seed, Text(gesture));

    /// <summary>Streams a gesture appends to: the first makes both, each tenth touches both, the others the season.</summary>
    public ImmutableArray<StreamId> Streams(int gesture) => gesture == 1 || gesture % 10 == 0 ? [Team, Season] : [Season];

    /// <summary>One to three entries of a few hundred bytes, like a painted phase or a dragged load.</summary>
    public ImmutableArray<NewEntry> Entries(int gesture, StreamId stream)
    {
        var random = new Random(HashCodeOf(gesture, stream));
        return [.. Enumerable.Range(0, random.Next(1, 4)).Select(index =>
        {
            var name = $"{Text(seed)}/{Text(gesture)}/{Text(index)}";
            return new NewEntry(1, $$"""{"edit":"{{name}}"}""", $$"""{"step":"{{name}}","pad":"{{new string('x', random.Next(50, 800))}}"}""",
                Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(name))));
        })];
    }

    /// <param name="tails">The streams' tails as the writer knows them.</param>
    public AppendRequest Request(int gesture, Func<StreamId, long> tails) => new(Id(gesture), "writer", [.. Streams(gesture).Select(stream =>
        new StreamAppend(stream, gesture == 1 ? 0 : tails(stream), Entries(gesture, stream))
        {
            Creates = gesture > 1 ? null
                : stream == Team ? new NewStream(StreamKind.Team, "Harbour Vale")
                : new NewStream(StreamKind.Season, "2027/28", Team),
        })]);

    private int HashCodeOf(int gesture, StreamId stream) => BitConverter.ToInt32(IdOf(seed, Text(gesture) + stream).ToByteArray());

    private static Guid IdOf(int seed, string name) => new(SHA256.HashData(Encoding.UTF8.GetBytes(Text(seed) + name)).AsSpan(0, 16));

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
