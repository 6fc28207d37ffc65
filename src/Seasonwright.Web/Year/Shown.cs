using System.Text.Json;

namespace Seasonwright.Web.Year;

/// <summary>How a person wants the year shown; kept per person, not in the plan.</summary>
/// <param name="Order">Track ids in the person's order; tracks not named come where they belong.</param>
public sealed record Shown(IReadOnlyList<string> Order, IReadOnlyList<string> Hidden, IReadOnlyList<string> Folded, bool HeadFolded)
{
    /// <summary>The name it is kept under.</summary>
    public const string Preference = "year.shown";

    public static Shown Default { get; } = new([], [], [], false);

    /// <summary>Reads what was kept; what cannot be read is the default, for only a taste is lost.</summary>
    public static Shown Read(string? json)
    {
        try
        {
            return json is null ? Default : JsonSerializer.Deserialize<Shown>(json) is { Order: not null, Hidden: not null, Folded: not null } shown ? shown : Default;
        }
        catch (JsonException)
        {
            return Default;
        }
    }

    public string Write() => JsonSerializer.Serialize(this);

    public Shown Toggle(string track, bool hide) => hide
        ? this with { Hidden = Toggled(Hidden, track) }
        : this with { Folded = Toggled(Folded, track) };

    /// <summary>Moves a track by one place among those drawn.</summary>
    public Shown Move(string track, int by, IReadOnlyList<string> drawn)
    {
        var order = drawn.ToList();
        var at = order.IndexOf(track);
        var to = at + by;
        if (at < 0 || to < 0 || to >= order.Count) return this;
        (order[at], order[to]) = (order[to], order[at]);
        return this with { Order = order };
    }

    private static IReadOnlyList<string> Toggled(IReadOnlyList<string> list, string track) =>
        list.Contains(track, StringComparer.Ordinal) ? [.. list.Where(other => other != track)] : [.. list, track];
}
