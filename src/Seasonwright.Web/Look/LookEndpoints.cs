using Seasonwright.Documents.Draw;

namespace Seasonwright.Web.Look;

/// <summary>Serves the one look: palette, drawing styles and the font family, the same that paper uses.</summary>
internal static class LookEndpoints
{
    public static void MapLook(this IEndpointRouteBuilder app)
    {
        var css = Stylesheet.ForPage("/fonts/");
        app.MapGet("/look.css", () => TypedResults.Text(css, "text/css"));
        app.MapGet("/fonts/{file}", (string file, HttpResponse response) =>
        {
            if (FontFile.All.FirstOrDefault(font => font.FileName == file) is not { } font) return Results.NotFound();
            response.Headers.CacheControl = "public, max-age=86400";
            return Results.Stream(font.Open(), "font/ttf");
        });
    }
}
