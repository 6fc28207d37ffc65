using System.Globalization;

namespace Seasonwright.Core.Quantities;

/// <summary>How long each part of a repetition takes, written as coaches do: "3-1-X-0" is three seconds down, one at the bottom, up as fast as possible, none at the top.</summary>
/// <param name="Down">Seconds of lowering, 0 to 30.</param>
/// <param name="Bottom">Seconds held, 0 to 30.</param>
/// <param name="Up">Seconds of lifting, 0 to 30; null for as fast as possible.</param>
/// <param name="Top">Seconds held, 0 to 30.</param>
public readonly record struct Tempo(int Down, int Bottom, int? Up, int Top)
{
    public const int Most = 30;

    /// <summary>Of a repetition for which nothing is asked: common practice, no source.</summary>
    public const int UsualSeconds = 3;

    /// <summary>Seconds of a repetition; as fast as possible counts as one.</summary>
    public int Seconds => Down + Bottom + (Up ?? 1) + Top;

    /// <summary>Null where the text is no tempo. "31X0", "3-1-X-0", "3.1.x.0" and "3 1 X 0" are one.</summary>
    public static Tempo? Parse(string text)
    {
        var parts = text.Split(['-', '.', '/', ' '], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (parts is [{ Length: 4 } run]) parts = [.. run.Select(letter => letter.ToString())];
        return parts is [var down, var bottom, var up, var top] && Number(down) is { } d && Number(bottom) is { } b && Number(top) is { } t
            && (Number(up) is { } u ? new Tempo(d, b, u, t) : up is "X" or "x" ? new Tempo(d, b, null, t) : (Tempo?)null) is { Seconds: > 0 } tempo ? tempo : null;
    }

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Down}-{Bottom}-{(Up is { } up ? up.ToString(CultureInfo.InvariantCulture) : "X")}-{Top}");

    private static int? Number(string text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number <= Most ? number : null;
}
