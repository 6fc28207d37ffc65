using System.Net;

namespace Seasonwright.Web.Host;

/// <summary>
/// Answers only requests that name this machine as host, and lets only our own pages change anything or hold a live
/// connection: a page of another site in the same browser cannot reach the data, even by renaming this machine.
/// </summary>
internal sealed class LoopbackOnly(RequestDelegate next)
{
    public Task InvokeAsync(HttpContext context)
    {
        var request = context.Request;
        var isOurs = IsThisMachine(request.Host.Host)
            && (IsReading(request) || request.Headers.Origin is not [{ Length: > 0 } origin] || origin == $"{request.Scheme}://{request.Host}");
        if (isOurs) return next(context);
        context.Response.StatusCode = StatusCodes.Status403Forbidden;
        return context.Response.WriteAsync(Words.Say("host.refused"));
    }

    private static bool IsThisMachine(string host) => host is "localhost" or "127.0.0.1" or "[::1]" || IPAddress.IPv6Loopback.ToString() == host;

    private static bool IsReading(HttpRequest request) =>
        (HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method)) && !request.HttpContext.WebSockets.IsWebSocketRequest
        && !request.Headers.ContainsKey("Upgrade");
}
