using System.Net;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http.Features;
using Seasonwright.Desk;
using Seasonwright.Web.Boards;
using Seasonwright.Web.Gestures;
using Seasonwright.Web.Gym;
using Seasonwright.Web.HandOut;
using Seasonwright.Web.Home;
using Seasonwright.Web.Look;
using Seasonwright.Web.Propose;
using Seasonwright.Web.Rooms;
using Seasonwright.Web.Seasons;

namespace Seasonwright.Web.Host;

/// <summary>The door for people: a web server on this machine's loopback address and nowhere else. Disposing closes it.</summary>
public sealed class Door : IAsyncDisposable
{
    // Above what a reader takes (SourceText), so that a list too large is told beside the box it was pasted into.
    private const int LargestForm = 16 << 20;

    // A sheet of as many cells as are read asks up to three things of each row.
    private const int MostFields = 60_000;

    private readonly WebApplication server;

    private Door(WebApplication server)
    {
        this.server = server;
        Address = new Uri(server.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First());
    }

    public Uri Address { get; }

    /// <summary>Serves the workspace from now on.</summary>
    /// <returns>Null when the port is taken.</returns>
    public static async Task<Door?> OpenAsync(Workspace workspace, StartOptions options)
    {
        var app = Build(workspace, options);
        try
        {
            await app.StartAsync();
        }
        catch (Exception fault) when (fault is IOException or System.Net.Sockets.SocketException)
        {
            await app.DisposeAsync();
            return null;
        }
        var door = new Door(app);
        workspace.Announce(door.Address);
        return door;
    }

    /// <summary>Waits until the process is asked to end.</summary>
    public Task WaitAsync() => server.WaitForShutdownAsync();

    public async ValueTask DisposeAsync()
    {
        // Pages that are leaving are seen out first.
        await server.StopAsync(TimeSpan.FromSeconds(2));
        await server.DisposeAsync();
    }

    private static WebApplication Build(Workspace workspace, StartOptions options)
    {
        // The program's own folder holds the pages' files, wherever it was started from.
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            ApplicationName = typeof(Door).Assembly.GetName().Name,
            ContentRootPath = AppContext.BaseDirectory,
            EnvironmentName = Environments.Production,
        });
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.Listen(IPAddress.Loopback, options.Port);
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = LargestForm;
        });
        builder.Logging.ClearProviders().AddSimpleConsole(console => console.SingleLine = true).SetMinimumLevel(LogLevel.Warning)
            // It warns that keys for forms lie unencrypted: in the person's own folder, beside all the rest.
            .AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        builder.Services.AddSingleton(workspace).AddSingleton(workspace.Clock);
        builder.Services.AddRazorComponents().AddInteractiveServerComponents();
        builder.Services.Configure<FormOptions>(form => (form.ValueLengthLimit, form.MultipartBodyLengthLimit, form.ValueCountLimit) = (LargestForm, LargestForm, MostFields));
        builder.Services.AddDataProtection().SetApplicationName("Seasonwright").PersistKeysToFileSystem(new DirectoryInfo(Path.Combine(workspace.Path, "keys")));
        builder.Services.AddAntiforgery(antiforgery => antiforgery.Cookie.Name = "seasonwright-form");

        var app = builder.Build();
        app.UseExceptionHandler("/trouble", createScopeForErrors: true);
        app.UseStatusCodePagesWithReExecute("/trouble/{0}", createScopeForStatusCodePages: true);
        app.UseMiddleware<LoopbackOnly>();
        app.UseMiddleware<StrictPolicy>();
        app.UseAntiforgery();
        app.MapStaticAssets();
        app.MapLook();
        app.MapGestures();
        app.MapRooms();
        app.MapStaff();
        app.MapPropose();
        app.MapLastSeason();
        app.MapHandOut();
        app.MapCards();
        app.MapBoard();
        app.MapHome();
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode(live =>
        {
            live.ContentSecurityFrameAncestorsPolicy = null;
            // On this machine only: squeezing a drawing takes longer than handing it over.
            live.DisableWebSocketCompression = true;
        });
        return app;
    }
}
