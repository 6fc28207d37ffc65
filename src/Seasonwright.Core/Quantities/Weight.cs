using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Seasonwright.Core.Quantities;

/// <summary>A weight in the gym as it was entered, in the unit entered; nothing is rounded. Above 0 to 1,000 kg.</summary>
/// <remarks>The international yard and pound of 1959: 1 lb is 0.45359237 kg exactly.</remarks>
public sealed record Weight
{
    /// <summary>Kilograms; nobody and no machine lifts more.</summary>
    public const decimal Most = 1_000;

    public const decimal KilogramsInPound = 0.45359237m;

    /// <exception cref="ArgumentOutOfRangeException">0, below it, or above <see cref="Most"/> kg.</exception>
    public Weight(decimal amount, MassUnit unit = MassUnit.Kilogram)
    {
        if (!IsPossible(amount, unit)) throw new ArgumentOutOfRangeException(nameof(amount), amount, $"A weight is above 0 and at most {Most} kg.");
        (Amount, Unit) = (Plain.Of(amount), unit);
    }

    public decimal Amount { get; }

    public MassUnit Unit { get; }

    /// <summary>Exact.</summary>
    public decimal Kilograms => Unit == MassUnit.Pound ? Amount * KilogramsInPound : Amount;

    /// <summary>The amount in a unit: exact in the unit entered and in kilograms, pounds of kilograms to 28 digits.</summary>
    public decimal In(MassUnit unit) => unit == Unit ? Amount : unit == MassUnit.Kilogram ? Kilograms : Amount / KilogramsInPound;

    /// <summary>Whether there is such a weight.</summary>
    public static bool IsPossible(decimal amount, MassUnit unit) => amount > 0 && amount <= (unit == MassUnit.Pound ? Most / KilogramsInPound : Most);

    /// <summary>Reads what <see cref="ToString"/> writes, the blank left out or not: "102.5 kg", "225lb". At most six decimals.</summary>
    public static bool TryParse(string text, [NotNullWhen(true)] out Weight? weight)
    {
        weight = null;
        MassUnit? unit = text.EndsWith("kg", StringComparison.Ordinal) ? MassUnit.Kilogram : text.EndsWith("lb", StringComparison.Ordinal) ? MassUnit.Pound : null;
        if (unit is not { } known || !decimal.TryParse(text[..^2].TrimEnd(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var amount)) return false;
        if (!IsPossible(amount, known) || !decimal.IsInteger(amount * 1_000_000)) return false;
        weight = new Weight(amount, known);
        return true;
    }

    /// <summary>"102.5 kg", "225 lb".</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Amount:0.######} {(Unit == MassUnit.Pound ? "lb" : "kg")}");
}
