namespace Seasonwright.Web.Host;

/// <summary>Pages may use our own scripts, styles, fonts and pictures and nothing from anywhere else, and nothing written into the page itself.</summary>
internal sealed class StrictPolicy(RequestDelegate next)
{
    private const string Policy = "default-src 'self'; script-src 'self'; style-src 'self'; img-src 'self' data:; object-src 'none'; "
        + "base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    public Task InvokeAsync(HttpContext context)
    {
        context.Response.OnStarting(() =>
        {
            var headers = context.Response.Headers;
            headers.ContentSecurityPolicy = Policy;
            headers.XContentTypeOptions = "nosniff";
            // Not "no-referrer": browsers then hide the origin of our own forms too, and LoopbackOnly would refuse them.
            headers["Referrer-Policy"] = "same-origin";
            headers["Cross-Origin-Opener-Policy"] = "same-origin";
            headers["Cross-Origin-Resource-Policy"] = "same-origin";
            return Task.CompletedTask;
        });
        return next(context);
    }
}
