using System.Collections.Immutable;

namespace Seasonwright.Documents.Draw;

/// <summary>
/// One committed file of the house's font family (Inter 4.001, SIL Open Font License 1.1).
/// The same bytes are measured here, served to the browser and embedded in the PDF, so that print equals page.
/// </summary>
public sealed record FontFile
{
    /// <summary>The family's name in style sheets.</summary>
    public const string Family = "Inter";

    private FontFile(FontWeight weight, string fileName) => (Weight, FileName) = (weight, fileName);

    public FontWeight Weight { get; }

    /// <summary>The name to serve it under, without a folder, for instance <c>Inter-Regular.ttf</c>.</summary>
    public string FileName { get; }

    /// <summary>All files, lightest first.</summary>
    public static ImmutableArray<FontFile> All { get; } =
    [
        new(FontWeight.Regular, "Inter-Regular.ttf"),
        new(FontWeight.Medium, "Inter-Medium.ttf"),
        new(FontWeight.SemiBold, "Inter-SemiBold.ttf"),
    ];

    /// <exception cref="InvalidOperationException">There is no file of this weight.</exception>
    public static FontFile Of(FontWeight weight) => All.First(file => file.Weight == weight);

    /// <summary>A fresh stream over the TrueType file; the caller disposes it.</summary>
    public Stream Open() => Resource(FileName);

    /// <summary>A fresh stream over the family's licence text (UTF-8); the caller disposes it.</summary>
    public static Stream OpenLicence() => Resource("OFL.txt");

    private static Stream Resource(string name) =>
        typeof(FontFile).Assembly.GetManifestResourceStream("Fonts/" + name)
        ?? throw new InvalidOperationException($"The embedded font resource {name} is missing from the build.");
}
