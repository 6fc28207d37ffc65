using Seasonwright.Bench.Kill;

namespace Seasonwright.Store.Tests;

/// <summary>A small dose of <c>./prove kill</c>.</summary>
public sealed class KillTests : IDisposable
{
    private const int Rounds = 3, Edits = 60;

    private readonly TemporaryFolder place = new();

    public void Dispose() => place.Dispose();

    [Fact]
    public async Task No_acknowledged_gesture_is_lost_or_doubled()
    {
        var seed = Environment.TickCount;
        for (var round = 1; round <= Rounds; round++)
        {
            var result = await KillRound.Run(place.In($"{round}"), seed + round, Edits, duringStart: round == 1);
            Assert.True(result.Problems.Count == 0, $"seed {result.Seed}: {string.Join("; ", result.Problems)}");
            Assert.Equal(Edits, result.Total);
        }
    }
}
