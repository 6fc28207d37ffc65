using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Bench.Open;

/// <summary>One season of 53 weeks with thousands of ordinary edits, and the opening of it.</summary>
internal static class LongSeason
{
    private const int Weeks = 53, Seed = 20270705;

    public static async Task<int> Make(string folder, int edits)
    {
        var random = new Random(Seed);
        await using var workspace = await Workspace.OpenAsync(folder, TimeProvider.System);
        var actor = workspace.LocalActor;
        var start = new StartSeason(new(2027, 7, 5), DayOfWeek.Monday, new ValueList<WeekId>(Enumerable.Range(1, Weeks).Select(Week)), new TeamCard("Harbour Vale", "2027/28", "HV"));
        var (answer, id) = await workspace.CreateAsync(actor, Guid.CreateVersion7(), null, [], [start]);
        if (answer is not Kept || await workspace.SeasonAsync(id!.Value) is not { } season) throw new InvalidOperationException($"{answer}");
        while (season.Stream.State.Number < edits)
        {
            var gesture = new Gesture(Guid.CreateVersion7(), season.Stream.State.Number, [Edit(random)]);
            if (await season.Stream.ApplyAsync(actor, gesture) is not Kept) throw new InvalidOperationException($"Refused: {gesture.Edits[0]}");
        }
        return 0;
    }

    /// <returns>The log number the season stands at.</returns>
    public static async Task<long> Open(string folder)
    {
        await using var workspace = await Workspace.OpenAsync(folder, TimeProvider.System);
        var listed = (await workspace.SeasonsAsync()).Single();
        return (await workspace.SeasonAsync(listed.Id))!.Stream.State.Number;
    }

    /// <summary>Four dragged loads to one painted phase.</summary>
    private static SeasonEdit Edit(Random random)
    {
        var first = random.Next(1, Weeks + 1);
        if (random.Next(5) > 0) return new SetWeekLoad(Week(first), Week(first), new Load(random.Next(500, 4000)));
        return new PaintPhase(Week(first), Week(random.Next(first, Math.Min(first + 6, Weeks) + 1)), new PhaseId(Fresh(random)), PhaseKind.GeneralPreparation, new PhaseId(Fresh(random)));
    }

    private static string Fresh(Random random) => random.NextInt64().ToString("x16", CultureInfo.InvariantCulture);

    private static WeekId Week(int number) => new(string.Create(CultureInfo.InvariantCulture, $"w{number}"));
}
