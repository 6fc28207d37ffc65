using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk;
using Seasonwright.Desk.Seasons;
using Seasonwright.Web.Layout;
using Seasonwright.Web.Seasons;
using Seasonwright.Web.Year;

namespace Seasonwright.Web.Gym;

/// <summary>A live page on which fields are sent as they are left (gym.js): it follows the season and the team, and answers what was typed with the edits that do it.</summary>
public abstract class WritingPart : LivePart, IAsyncDisposable
{
    private (string Field, string Sentence)? wrong;
    private IJSObjectReference? script;
    private DotNetObjectReference<WritingPart>? self;

    [Inject] public required Workspace Workspace { get; set; }

    [Inject] public required IJSRuntime Script { get; set; }

    [Parameter, EditorRequired] public required string Id { get; set; }

    /// <summary>Null while it is looked for, and where there is none.</summary>
    protected OpenSeason? Open { get; private set; }

    protected Season Season { get; private set; } = null!;

    protected Setup Setup { get; private set; } = null!;

    /// <summary>The page itself, under the script's hand.</summary>
    protected ElementReference Page { get; set; }

    /// <summary>What the page's element carries for the script.</summary>
    protected IReadOnlyDictionary<string, object> Carries => new Dictionary<string, object>(StringComparer.Ordinal)
    {
        ["data-season"] = Id,
        ["data-number"] = Open!.Stream.State.Number,
        ["data-team-number"] = Open.TeamStream.State.Number,
        ["data-words"] = Keeping.Spoken,
    };

    /// <summary>Something was typed into a field, or a row's button pressed: the edits that do it.</summary>
    [JSInvokable]
    public object[] Write(string field, string text)
    {
        var (edit, sentence) = Open is null ? (null, null) : Written(field, text);
        wrong = sentence is null ? null : (field, sentence);
        StateHasChanged();
        return edit is null ? [] : [edit];
    }

    public async ValueTask DisposeAsync()
    {
        if (Open is not null) Open.Changed -= Repaint;
        self?.Dispose();
        GC.SuppressFinalize(this);
        try
        {
            if (script is not null) await script.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // The page is gone already, and its script with it.
        }
    }

    protected override async Task OnInitializedAsync()
    {
        Open = await SeasonAt.FindAsync(Workspace, Id);
        if (Open is null) return;
        await LookAsync();
        Open.Changed += Repaint;
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender || Open is null) return;
        self = DotNetObjectReference.Create(this);
        script = await Script.InvokeAsync<IJSObjectReference>("import", "/gym.js");
        await script.InvokeVoidAsync("start", Page, self);
    }

    /// <summary>The edit that does what was typed, or what is wrong with it; neither where nothing is otherwise.</summary>
    protected abstract (JsonNode? Edit, string? Wrong) Written(string field, string text);

    /// <summary>Looks at the season and the team as they are now.</summary>
    protected virtual Task LookAsync()
    {
        (Season, Setup) = (Open!.Season, Open.Setup);
        return Task.CompletedTask;
    }

    /// <summary>What is wrong with a field, told beside it.</summary>
    protected RenderFragment? Wrong(string field) => wrong is var (at, sentence) && at == field ? builder =>
    {
        builder.OpenElement(0, "span");
        builder.AddAttribute(1, "class", "wrong");
        builder.AddAttribute(2, "role", "alert");
        builder.AddContent(3, sentence);
        builder.CloseElement();
    }
    : null;

    private void Repaint() => LookAgain(LookAsync);
}
