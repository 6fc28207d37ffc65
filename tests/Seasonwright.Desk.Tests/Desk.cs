using Microsoft.Extensions.Time.Testing;
using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Desk.Tests;

/// <summary>A workspace in a folder of its own that can be closed and opened again; the folder goes when the test ends.</summary>
internal sealed class Desk : IAsyncDisposable
{
    public static readonly ValueList<WeekId> Weeks = Enumerable.Range(1, 12).Select(n => new WeekId($"w{n}")).ToValueList();

    private Desk(string path, Workspace workspace, FakeTimeProvider clock) => (Path, Workspace, Clock) = (path, workspace, clock);

    public string Path { get; }

    public Workspace Workspace { get; private set; }

    public FakeTimeProvider Clock { get; }

    public Actor Runa { get; } = new("runa");

    public Actor Tove { get; } = new("tove");

    public static async Task<Desk> OpenAsync(string? path = null)
    {
        path ??= System.IO.Path.Combine(System.IO.Path.GetTempPath(), $"desk-{Guid.NewGuid():N}");
        var clock = new FakeTimeProvider(new DateTimeOffset(2027, 10, 20, 7, 0, 0, TimeSpan.Zero));
        var desk = new Desk(path, await Workspace.OpenAsync(path, clock), clock);
        await desk.Workspace.NamePersonAsync("runa", "Runa Eskdale");
        await desk.Workspace.NamePersonAsync("tove", "Tove Marrin");
        return desk;
    }

    /// <summary>Closes the folder and opens it again: what another start of the program sees.</summary>
    public async Task RestartAsync()
    {
        await Workspace.DisposeAsync();
        Workspace = await Workspace.OpenAsync(Path, Clock);
    }

    /// <summary>A season of twelve weeks of a new team.</summary>
    public async Task<SeasonId> StartAsync(Guid? gesture = null)
    {
        var (answer, season) = await Workspace.CreateAsync(Runa, gesture ?? Guid.NewGuid(), null, [],
            [new StartSeason(new DateOnly(2027, 7, 5), DayOfWeek.Monday, Weeks, new TeamCard("Harbour Vale", "2027-28"))]);
        Assert.IsType<Kept>(answer);
        return season!.Value;
    }

    public async Task<OpenSeason> SeasonAsync(SeasonId id) =>
        await Workspace.SeasonAsync(id) ?? throw new InvalidOperationException($"No season {id}.");

    public static SeasonEdit Load(int week, int au) => new SetWeekLoad(Weeks[week - 1], Weeks[week - 1], new Load(au));

    public static Gesture Gesture(OpenSeason season, params Edit[] edits) => new(Guid.NewGuid(), season.Stream.State.Number, edits);

    /// <summary>A load as the page shows it.</summary>
    public static string PercentOf(OpenSeason season, int au) => new Load(au).PercentOf(season.Setup.ReferenceWeek).ToString();

    public static int? Au(OpenSeason season, int week) => season.Season.TargetOf(Weeks[week - 1])?.Au;

    public async ValueTask DisposeAsync()
    {
        await Workspace.DisposeAsync();
        Directory.Delete(Path, recursive: true);
    }
}
