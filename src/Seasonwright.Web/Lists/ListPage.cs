using Microsoft.AspNetCore.Components;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Seasons;
using Seasonwright.Desk;
using Seasonwright.Desk.Lists;
using Seasonwright.Desk.Seasons;
using Seasonwright.Desk.Streams;
using Seasonwright.Documents.Read;
using Seasonwright.Store;
using Seasonwright.Web.Seasons;

namespace Seasonwright.Web.Lists;

/// <summary>What the pages that take lists in have in common: read what stands in the form, show it, and on "take" write it as one gesture.</summary>
public abstract class ListPage : ComponentBase
{
    [Inject] protected Workspace Workspace { get; set; } = null!;

    [Inject] protected NavigationManager Navigation { get; set; } = null!;

    [Parameter] public required string Id { get; set; }

    /// <summary>One of the three questions of a new season: the next one follows.</summary>
    [SupplyParameterFromQuery(Name = "new")] public bool IsNew { get; set; }

    [CascadingParameter] private HttpContext Http { get; set; } = null!;

    /// <summary>Null when there is no such season.</summary>
    protected OpenSeason? Open { get; private set; }

    /// <summary>The season as it will be; as it is while nothing is read.</summary>
    protected Season? Drawn { get; private set; }

    protected IReadOnlyList<string> Refused { get; private set; } = [];

    protected Guid Gesture { get; private set; } = Guid.CreateVersion7();

    protected ListForm Form { get; private set; } = ListForm.Empty;

    /// <summary>Where to go when the list is in, or left for later.</summary>
    protected abstract string After { get; }

    /// <summary>Reads the form's list for the page to show.</summary>
    /// <returns>Whether the list may be taken in as it stands, the edit that does it (null when it changes nothing), and the answers that it rests on.</returns>
    protected abstract ListReading Read(OpenSeason open, ListForm form);

    protected override async Task OnInitializedAsync()
    {
        Open = await SeasonAt.FindAsync(Workspace, Id);
        if (Open is null) Navigation.NotFound();
        else Drawn = Open.Season;
    }

    protected async Task TakeAsync()
    {
        var posted = new Posted(await Http.Request.ReadFormAsync());
        var (actor, team) = (Workspace.LocalActor, Open!.Setup.Id);
        Gesture = posted.Gesture;
        Form = await ListForm.ReadAsync(posted, await Workspace.AnswersAsync(actor, team));
        if (Form.IsEmpty) return;
        var number = Open.Stream.State.Number;
        var reading = Read(Open, Form);
        Drawn = reading.Edit is null ? Open.Season : Decider.Decide(Open.Season, reading.Edit) is Accepted accepted ? Open.Season.With(accepted.Step) : Open.Season;
        if (posted["act"] != "take" || !reading.IsReady) return;
        // A second click finds everything written already: what was asked is done.
        var answer = reading.Edit is null ? null : await Open.Stream.ApplyAsync(actor, new Gesture(Gesture, number, [reading.Edit]));
        if (answer is null or Kept)
        {
            await RememberAsync(() => Workspace.RememberAsync(actor, team, reading.Answers));
            Navigation.NavigateTo(After);
        }
        else Refused = Refusals.Of(answer);
    }

    // The list is in; on a disk that has filled up since, only its answers have to be given again.
    private static async Task RememberAsync(Func<Task> remember)
    {
        try
        {
            await remember();
        }
        catch (StoreTrouble)
        {
        }
    }
}

/// <summary>What a list comes to.</summary>
public sealed record ListReading(bool IsReady, SeasonEdit? Edit, Answers Answers);
