using System.Globalization;

namespace Seasonwright.Bench.Browser;

/// <summary>Measured values of one thing, and what a table says of them.</summary>
internal sealed class Sample
{
    private readonly List<double> values = [];

    public int Count => values.Count;

    public void Add(double value) => values.Add(value);

    public void Add(Sample other) => values.AddRange(other.values);

    /// <summary>The smallest measured value that so many per cent of all do not exceed (nearest rank).</summary>
    public double At(int percent) => values.Order().ElementAt(Math.Clamp((int)Math.Ceiling(values.Count * percent / 100.0) - 1, 0, values.Count - 1));

    /// <summary>"median / 95th / 99th", to a tenth.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{At(50):0.0} / {At(95):0.0} / {At(99):0.0}");
}
