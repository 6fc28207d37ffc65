using Microsoft.AspNetCore.Components;

namespace Seasonwright.Web.Layout;

/// <summary>A live part of a page that follows what happens elsewhere.</summary>
public abstract class LivePart : ComponentBase
{
    /// <summary>Looks again and repaints. Whoever made the change, a person or the engine, does not wait for this page to be laid out.</summary>
    protected void LookAgain(Func<Task> look) => _ = Task.Run(() => InvokeAsync(async () =>
    {
        try
        {
            await look();
            StateHasChanged();
        }
        catch (Exception fault)
        {
            // Nobody awaits a repaint: the page has to say that it no longer follows.
            await DispatchExceptionAsync(fault);
        }
    }));

    /// <inheritdoc cref="LookAgain(Func{Task})"/>
    protected void LookAgain(Action look) => LookAgain(() =>
    {
        look();
        return Task.CompletedTask;
    });
}
