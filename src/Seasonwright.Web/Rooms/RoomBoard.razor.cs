using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Seasonwright.Core;
using Seasonwright.Core.Rooms;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Rooms;
using Seasonwright.Desk.Seasons;
using Seasonwright.Documents;

namespace Seasonwright.Web.Rooms;

public sealed partial class RoomBoard
{
    private readonly HashSet<OpenSeason> followed = [];
    private RoomNow? now;
    private Facility facility = null!;
    private LocaleSettings locale = new();
    private long number;
    private RoomClockFace face = new(0, 4);
    private IReadOnlyList<RoomDay> days = [];
    private IReadOnlyList<string> allClashes = [];

    /// <summary>Teams whose sessions are in published versions.</summary>
    private IReadOnlySet<SeasonId> published = new HashSet<SeasonId>();

    private SessionId? chosen;

    /// <summary>Half hours at which the chosen session cannot begin, and why; those that are not in it are free.</summary>
    private IReadOnlyDictionary<(DateOnly Day, int Half), string> against = new Dictionary<(DateOnly, int), string>();

    /// <summary>A session on the place it was put, and what it clashes with there.</summary>
    private (RoomMove Move, IReadOnlyList<string> Clashes)? objection;

    /// <summary>The week as the engine would have it; looked at, not taken yet.</summary>
    private ProposedRoom? proposed;

    private LastMove? last;

    /// <summary>Somebody has removed the room while it was looked at.</summary>
    private bool isGone;
    private CancellationTokenSource? work;
    private ElementReference page;
    private IJSObjectReference? script;
    private DotNetObjectReference<RoomBoard>? self;

    [Parameter, EditorRequired] public required string Id { get; set; }

    /// <summary>The first day of the week.</summary>
    [Parameter, EditorRequired] public required DateOnly First { get; set; }

    /// <summary>The one day that is looked at; null for the week.</summary>
    [Parameter] public DateOnly? Day { get; set; }

    private Room Room => facility.Room;

    private bool IsAtWork => work is not null;

    private RoomBooking? Chosen => chosen is { } id ? now!.Plan.Booking(id) : null;

    private RoomWeek Shown => proposed?.Week ?? now!.Plan.Week;

    /// <summary>Sessions that need a gym and have no place in this one.</summary>
    private List<RoomBooking> Waiting => [.. now!.Plan.Bookings.Where(one => Shown.Asks.Any(asked => asked.Ask.Id == one.Id && asked.Ask.Place is null))];

    private int TeamsHere => now!.Plan.Bookings.Where(one => one.IsHere).Select(one => one.Team).Distinct().Count();

    private DateOnly Today => now!.Plan.Week.Span.Contains(Workspace.Today) ? Workspace.Today : First;

    private DateOnly Step(int by) => Day is { } day ? day.AddDays(by) : First.AddDays(RoomWeek.Length * by);

    private string To(int by) => $"/room/{Id}?week={Step(by).Iso()}{(Day is null ? "" : "&view=day")}";

    private string Moves(IEnumerable<RoomMove> moves) => RoomMoveText.Of(moves.Select(move => RoomMoveText.Of(move, now!)));

    protected override async Task OnInitializedAsync()
    {
        await LookAsync();
        (await Workspace.ClubStreamAsync()).Changed += Repaint;
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender || now is null) return;
        self = DotNetObjectReference.Create(this);
        script = await Script.InvokeAsync<IJSObjectReference>("import", "/room.js");
        await script.InvokeVoidAsync("start", page, self);
    }

    /// <summary>A session was put on a day at a time.</summary>
    /// <returns>The move, where nothing is against it; else the page asks.</returns>
    [JSInvokable]
    public object[] Put(string session, string day, string start)
    {
        objection = null;
        if (!IdText.IsId(session) || now?.Plan.Booking(new(session)) is not { IsFixed: false } booking || RoomMoveText.TimeOfDay(start) is not { } time || Seasons.StartForm.DayOf(day) is not { } to) return [];
        var place = new RoomPlace(to, time);
        if (now.Plan.Ask(booking.Id)!.Place == place) return [];
        Leave();
        var move = new RoomMove(booking, place);
        var clashes = AgainstAt(booking.Id, place);
        if (clashes.Count > 0) objection = (move, clashes);
        StateHasChanged();
        return clashes.Count > 0 ? [] : [RoomMoveText.Node(RoomMoveText.Of(move, now))];
    }

    /// <summary>A session is taken in hand: at which half hours it cannot begin, by "2027-10-21 17:30", and why.</summary>
    [JSInvokable]
    public IReadOnlyDictionary<string, string> Judge(string session)
    {
        if (!IdText.IsId(session) || now?.Plan.Booking(new(session)) is not { IsFixed: false } booking) return new Dictionary<string, string>(StringComparer.Ordinal);
        Choose(booking.Id);
        StateHasChanged();
        return against.ToDictionary(one => $"{one.Key.Day.Iso()} {RoomClockFace.Words(one.Key.Half)}", one => one.Value, StringComparer.Ordinal);
    }

    /// <summary>What was moved is looked at.</summary>
    [JSInvokable]
    public void Close()
    {
        Clear();
        StateHasChanged();
    }

    public async ValueTask DisposeAsync()
    {
        foreach (var open in followed) open.Changed -= Look;
        (await Workspace.ClubStreamAsync()).Changed -= Repaint;
        self?.Dispose();
        Stop();
        try
        {
            if (script is not null) await script.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // The page is gone already, and its script with it.
        }
    }

    private void Repaint(Desk.Streams.StreamState state) => Look();

    private void Look() => LookAgain(LookAsync);

    private async Task LookAsync()
    {
        if ((await Workspace.ClubAsync()).Facility(new(Id)) is not { } here)
        {
            isGone = true;
            return;
        }
        isGone = false;
        var seasons = await Workspace.OpenSeasonsAsync();
        foreach (var open in seasons)
            if (followed.Add(open)) open.Changed += Look;
        // The number first: what is shown is never older than it says.
        var at = await Workspace.RoomNumberAsync();
        var was = now?.Plan;
        now = await Workspace.RoomNowAsync(here.Room, First);
        (facility, number, last) = (here, at, await Workspace.LastMoveAsync(Workspace.LocalActor));
        published = seasons.Where(open => open.Season.LastPublication is not null).Select(open => open.Season.Id).ToHashSet();
        locale = seasons.Count > 0 ? seasons[0].Setup.Locale : new();
        if (!now.Plan.Equals(was)) (proposed, objection) = (null, null);
        Lay();
    }

    private void Lay()
    {
        face = RoomClockFace.Of(Shown);
        days = RoomDay.Of(now!.Plan, Shown);
        allClashes = [.. RoomClash.Of(Shown).Select(clash => clash.Sentence)];
        against = proposed is null && Chosen is { IsFixed: false } booking ? Against(booking) : new Dictionary<(DateOnly, int), string>();
    }

    private Dictionary<(DateOnly, int), string> Against(RoomBooking booking)
    {
        Dictionary<(DateOnly, int), string> found = [];
        foreach (var day in now!.Plan.Week.Span.Days())
            foreach (var half in face.Halves)
                if (AgainstAt(booking.Id, new(day, Clock.Time(half * Clock.HalfHour))) is { Count: > 0 } clashes) found[(day, half)] = string.Join(" ", clashes);
        return found;
    }

    /// <summary>What a session clashes with at a place: the judge that looks at the whole week, asked for this one.</summary>
    private IReadOnlyList<string> AgainstAt(SessionId session, RoomPlace place) => [.. now!.Plan.Clashes(session, place).Select(clash => clash.Sentence).Distinct(StringComparer.Ordinal)];

    private void Choose(SessionId id)
    {
        proposed = null;
        (chosen, objection) = (id, null);
        Lay();
    }

    private void Clear()
    {
        (chosen, objection) = (null, null);
        Lay();
    }

    private async Task ProposeAsync()
    {
        Clear();
        using var stop = work = new();
        var based = now!.Plan;
        try
        {
            var found = await Task.Run(() => RoomPlans.Propose(based, stop.Token));
            // Changed meanwhile, it is a proposal for another week.
            if (based.Equals(now.Plan)) proposed = found;
        }
        catch (OperationCanceledException)
        {
            // Stopped: the week stays as it is.
        }
        finally
        {
            work = null;
        }
        Lay();
    }

    private void Stop() => work?.Cancel();

    /// <summary>The proposal goes; what is looked at stays.</summary>
    private void Leave()
    {
        if (proposed is null) return;
        proposed = null;
        Lay();
    }
}
