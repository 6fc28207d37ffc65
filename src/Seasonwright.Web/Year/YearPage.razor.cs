using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Seasonwright.Core;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Rules;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk;
using Seasonwright.Desk.Lists;
using Seasonwright.Desk.Seasons;
using Seasonwright.Documents.Draw;
using Seasonwright.Documents.Year;
using Seasonwright.Store;
using Seasonwright.Web.Seasons;

namespace Seasonwright.Web.Year;

/// <summary>
/// The heart: one season, drawn, live. This component lays out and repaints; the hand is year.js, changes come in through the
/// gestures endpoint, and every open page hears of them from <see cref="OpenSeason.Changed"/>.
/// </summary>
public sealed partial class YearPage : IAsyncDisposable
{
    private const int PrerenderWidth = 1280;

    // Narrower, a season's weeks could not be told apart; the chart then scrolls sideways in its frame.
    private const int LeastWidth = 680;

    private const string Check = "check", Publish = "publish";

    private OpenSeason? open;
    private Actor? actor;
    private ImmutableDictionary<string, string> names = ImmutableDictionary<string, string>.Empty;
    private Shown shown = Shown.Default;
    private PublishedSeason? published;
    private IReadOnlyList<string> drafts = [];
    private YearView view = new();
    private YearDrawing? drawing;
    private Season season = null!;
    private Setup setup = null!;
    private Place place = new(null, 0, 0, null, null, null, null);
    private Checkup? checkup;
    private int? checkWeek;
    private (Finding Finding, Season Season, Checkup After)? previewed;
    private string panel = "";

    // Where the script's cursor is to go: first and last week, and a number that makes a second asking another.
    private string goTo = "";
    private long number, teamNumber, laid;
    private bool isStale, isGone;
    private double height;
    private int here;
    private ImmutableArray<(TrackDrawing Track, double Top)> rows = [];
    private ImmutableArray<string> trackIds = [];
    private string weeks = "", entries = "", items = "", scale = "";
    private ElementReference page;
    private IJSObjectReference? script;
    private DotNetObjectReference<YearPage>? self;

    [Parameter] public required string Id { get; set; }

    [CascadingParameter] private Microsoft.AspNetCore.Http.HttpContext? Http { get; set; }

    protected override async Task OnInitializedAsync()
    {
        if (await SeasonAt.FindAsync(Workspace, Id) is not { } found)
        {
            Navigation.NotFound();
            return;
        }
        open = found;
        actor = Workspace.LocalActor;
        names = await Workspace.NamesAsync();
        var preferences = await Workspace.PreferencesAsync(actor);
        shown = Shown.Read(preferences.GetValueOrDefault(Shown.Preference));
        published = await open.PublishedAsync();
        var width = int.TryParse(Http?.Request.Cookies["seasonwright-width"], NumberStyles.None, CultureInfo.InvariantCulture, out var known) ? known : PrerenderWidth;
        view = new YearView { Width = Math.Clamp(width, LeastWidth, 6000), Today = Workspace.Today };
        if (isGone) return;
        open.Changed += Repaint;
        Lay();
        here = (season.WeekOf(Workspace.Today)?.Number ?? 1) - 1;
        place = place with { First = here, Last = here };
        if (Http is null) await PreferAsync(LastSeasonEndpoint.Preference, JsonSerializer.Serialize(Id));
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender || open is null) return;
        self = DotNetObjectReference.Create(this);
        script = await Script.InvokeAsync<IJSObjectReference>("import", "/year.js");
        await script.InvokeVoidAsync("start", page, self);
    }

    /// <summary>The script says how wide the chart is.</summary>
    [JSInvokable]
    public void Fit(int width)
    {
        width = Math.Clamp(width, LeastWidth, 6000);
        if ((int)view.Width == width) return;
        view = view with { Width = width };
        Lay();
        StateHasChanged();
    }

    /// <summary>The script says where the person is.</summary>
    [JSInvokable]
    public void Show(Place to)
    {
        place = Within(to);
        // Whoever looks through the findings stays with them.
        if (IsAboutFindings(panel) && to.Track == TrackIds.Findings) checkWeek = place.First + 1;
        else Turn("");
        StateHasChanged();
    }

    /// <summary>Opens a panel, "" for the week's.</summary>
    [JSInvokable]
    public void Open(string which)
    {
        Turn(panel == which ? "" : which);
        StateHasChanged();
    }

    /// <summary>Cells were pasted onto the year: the edits they make, or why not. The script sends them as one gesture.</summary>
    [JSInvokable]
    public PastedEdits Paste(string text, string track, int week, string? day)
    {
        var at = DateOnly.TryParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var known) ? known : (DateOnly?)null;
        var pasted = PastedCells.Read(season, setup, trackIds, text, track, Math.Clamp(week, 0, season.Weeks.Length - 1), at);
        return new([.. pasted.Edits.Select(Template.Node)], pasted.Problem);
    }

    public async ValueTask DisposeAsync()
    {
        isGone = true;
        if (open is not null) open.Changed -= Repaint;
        self?.Dispose();
        try
        {
            if (script is not null) await script.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // The page is gone already, and its script with it.
        }
    }

    // Of changes that come while the page is laid out one repaint shows all.
    private void Repaint()
    {
        if (!Interlocked.Exchange(ref isStale, true)) LookAgain(RepaintAsync);
    }

    private async Task RepaintAsync()
    {
        Volatile.Write(ref isStale, false);
        if (open!.Season.LastPublication != season.LastPublication) published = await open.PublishedAsync();
        Lay();
    }

    /// <summary>Findings are in the drawing while they are looked at; while the year is painted they wait behind their count.</summary>
    private void Turn(string to)
    {
        var isAboutFindings = IsAboutFindings(panel) || IsAboutFindings(to);
        panel = to;
        checkWeek = null;
        if (!isAboutFindings) return;
        previewed = null;
        Lay();
    }

    /// <summary>Whoever checks or publishes sees what was found.</summary>
    private static bool IsAboutFindings(string panel) => panel is Check or Publish;

    private void ToWeek(Core.Rules.Place to)
    {
        place = Within(new Place(TrackIds.Findings, to.First - 1, to.Last - 1, null, null, null, null));
        goTo = string.Create(CultureInfo.InvariantCulture, $"{place.First} {place.Last} {laid}");
        if (view.Zoom != YearZoom.Season) ZoomTo(view.Zoom);
    }

    private async Task PreviewAsync(FindingKey key)
    {
        if (previewed?.Finding.Key == key || checkup!.Findings.FirstOrDefault(finding => finding.Key == key) is not { } finding || finding.Mend(season) is not { } mended) previewed = null;
        else
        {
            previewed = (finding, mended, Rulebook.Check(mended, setup));
            ToWeek(finding.Place);
        }
        Lay();
        if (previewed is not null && script is not null) await script.InvokeVoidAsync("look", page);
    }

    /// <summary>A remedy may bring something else about: that is said before it is taken.</summary>
    private string AddedByPreview
    {
        get
        {
            var known = checkup!.Findings.Select(finding => finding.Key).ToHashSet();
            var added = previewed!.Value.After.Findings.Where(finding => !known.Contains(finding.Key)).Select(finding => Words.Say("check.added-one", finding.Rule.Name, finding.Place.Weeks)).ToList();
            return added.Count == 0 ? "" : Words.Say("check.added", string.Join(", ", added));
        }
    }

    /// <summary>The weeks that the previewed remedy changes.</summary>
    private IEnumerable<WeekColumn> MarkedColumns
    {
        get
        {
            if (previewed is not { } preview) return [];
            var changed = Step.Between(season.Facts, preview.Season.Facts).Changes.Select(change => change.Key.Subject.Split(':')[0]).ToHashSet(StringComparer.Ordinal);
            var tests = preview.Finding.Remedy.OfType<SetTestDay>().Select(edit => edit.TestDay.Day).ToList();
            return drawing!.Columns.Where(column => changed.Contains(column.Week.Id.Text) || tests.Exists(column.Week.Days.Contains));
        }
    }

    private static string Px(double px) => px.ToString("0.##", CultureInfo.InvariantCulture);

    private void PreviewOff()
    {
        previewed = null;
        Lay();
    }

    private void Lay()
    {
        (season, setup) = (open!.Season, open.Setup);
        (number, teamNumber) = (open.Stream.State.Number, open.TeamStream.State.Number);
        laid++;
        place = Within(place);
        checkup = open.Checkup;
        // What was looked at before somebody changed the plan is no preview of it any more.
        if (previewed is { } preview && preview.Finding.Mend(season) is var mended && (mended is null || !mended.Equals(preview.Season))) previewed = null;
        var shownFindings = previewed?.After.Findings ?? checkup.Findings;
        drawing = YearDrawing.Of(previewed?.Season ?? season, setup, view with { Findings = IsAboutFindings(panel) ? shownFindings : [.. shownFindings.Where(finding => finding.Severity == Severity.Stop)], TrackOrder = shown.Order.ToValueList(), Hidden = shown.Hidden.ToValueList(), Folded = shown.Folded.ToValueList() });
        rows = [.. drawing.Tracks.Stacked()];
        trackIds = [.. drawing.Tracks.Select(track => track.Id)];
        height = drawing.Height;
        drafts = OpenSeason.Draft(season, setup, published);
        weeks = Template.Of(season.Weeks.Select(week => new { id = week.Id.Text, first = week.Days.First, last = week.Days.Last }));
        entries = Entries.Of(season, setup);
        items = Graspable.Of(season);
        scale = drawing.Load is { } load ? Template.Of(new { top = load.TopY, bottom = load.ZeroY, most = load.Top }) : "{}";
    }

    private async Task Show(Shown how)
    {
        shown = how;
        Lay();
        await PreferAsync(Shown.Preference, how.Write());
    }

    // On a full disk only a taste is lost.
    private async Task PreferAsync(string name, string json)
    {
        try
        {
            await Workspace.PreferAsync(actor!, name, json);
        }
        catch (StoreTrouble)
        {
            // The page goes on as it is shown.
        }
    }

    private Place Within(Place to)
    {
        var last = season.Weeks.Length - 1;
        return to with { First = Math.Clamp(to.First, 0, last), Last = Math.Clamp(to.Last, 0, last) };
    }

    private Task FoldHead() => Show(shown with { HeadFolded = !shown.HeadFolded });

    private void ZoomTo(YearZoom zoom)
    {
        // Keep the chosen week in sight.
        view = view with { Zoom = zoom, FirstWeek = Math.Max(1, place.First - 1) };
        Lay();
    }

    private void Turn(int by)
    {
        var step = view.Zoom == YearZoom.Day ? 2 : 6;
        view = view with { FirstWeek = Math.Clamp(view.FirstWeek + by * step, 1, season.Weeks.Length - drawing!.Columns.Count + 1) };
        Lay();
    }
}
