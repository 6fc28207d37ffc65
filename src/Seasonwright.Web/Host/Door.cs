using System.Net;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http.Features;
using Seasonwright.Desk;
using Seasonwright.Web.Gestures;
using Seasonwright.Web.Look;
using Seasonwright.Web.Seasons;

namespace Seasonwright.Web.Host;

/// <summary>The door for people: a web server on this machine's loopback address and nowhere else.</summary>
internal static class Door
{
    // Above what a reader takes (SourceText), so that a list too large is told beside the box it was pasted into.
    private const int LargestForm = 16 << 20;

    /// <summary>Serves the workspace until the process is asked to end.</summary>
    /// <returns>The exit code: 0 after a proper end, 1 when the port is taken.</returns>
    public static async Task<int> RunAsync(Workspace workspace, StartOptions options)
    {
        await using var app = Build(workspace, options);
        try
        {
            await app.StartAsync();
        }
        catch (Exception fault) when (fault is IOException or System.Net.Sockets.SocketException)
        {
            await Console.Error.WriteLineAsync(Words.Say("start.port-taken", options.Port));
            return 1;
        }
        var address = new Uri(app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First());
        workspace.Announce(address);
        Console.WriteLine(Words.Say("start.ready", address.GetLeftPart(UriPartial.Authority), workspace.Path));
        if (options.Browser) Desktop.Open(address);
        await app.WaitForShutdownAsync();
        return 0;
    }

    private static WebApplication Build(Workspace workspace, StartOptions options)
    {
        // The program's own folder holds the pages' files, wherever it was started from.
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory, EnvironmentName = Environments.Production });
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
        builder.Services.Configure<FormOptions>(form => (form.ValueLengthLimit, form.MultipartBodyLengthLimit) = (LargestForm, LargestForm));
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
        app.MapStaff();
        app.MapLastSeason();
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode(live =>
        {
            live.ContentSecurityFrameAncestorsPolicy = null;
            // On this machine only: squeezing a drawing takes longer than handing it over.
            live.DisableWebSocketCompression = true;
        });
        return app;
    }
}
