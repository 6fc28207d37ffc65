using System.Globalization;
using Seasonwright.Core;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Strength;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents;

/// <summary>Sets, efforts and weights as athletes and coaches read them, with the team's decimal sign.</summary>
public static class WorkWords
{
    /// <summary>"4 x 5", "3 x 30 s", "2 x 20 m", and for each side where the exercise has sides.</summary>
    public static string Sets(Prescription prescription, Exercise exercise)
    {
        var sets = Say("work.sets", prescription.Sets, Length(prescription));
        return exercise.IsOneSided ? Say("work.each-side", sets) : sets;
    }

    /// <summary>Of one set: "x 5", "30 s", "20 m", and for each side where the exercise has sides.</summary>
    public static string Amount(Prescription prescription, Exercise exercise)
    {
        var amount = prescription.Unit == WorkUnit.Repetitions ? Say("work.times", prescription.Amount) : Length(prescription);
        return exercise.IsOneSided ? Say("work.each-side", amount) : amount;
    }

    private static string Length(Prescription prescription) => prescription.Unit switch
    {
        WorkUnit.Seconds => Say("work.seconds", prescription.Amount),
        WorkUnit.Metres => Say("work.metres", prescription.Amount),
        _ => prescription.Amount.ToString(CultureInfo.InvariantCulture),
    };

    /// <summary>"80 %", "2 in reserve", "0.50 m/s, stop at 20 % less", "20 kg", "50 % of body mass"; empty for as it comes.</summary>
    public static string Of(Effort effort, LocaleSettings locale) => effort switch
    {
        { Kind: EffortKind.OfMax, Amount: { } percent } => Say("work.of-max", Number(percent, locale)),
        { Kind: EffortKind.Reserve, Amount: { } reserve } => Say("work.reserve", Number(reserve, locale)),
        { Kind: EffortKind.Velocity, Amount: { } velocity, StopLoss: { } loss } => Say("work.velocity-loss", Number(velocity, locale), loss.Value),
        { Kind: EffortKind.Velocity, Amount: { } velocity } => Say("work.velocity", Number(velocity, locale)),
        { Kind: EffortKind.OfBodyMass, Amount: { } percent } => Say("work.of-body", Number(percent, locale)),
        { Kind: EffortKind.Fixed, Weight: { } weight } => Of(weight, locale),
        _ => "",
    };

    /// <summary>"102.5 kg".</summary>
    public static string Of(Weight weight, LocaleSettings locale) => Say(weight.Unit == MassUnit.Pound ? "work.pounds" : "work.kilograms", Number(weight.Amount, locale));

    /// <summary>The weight as it is taken: of two dumbbells each, of what hangs on the body with a plus, else how hard it should be.</summary>
    public static string Of(GivenLoad load, Exercise exercise, Prescription prescription, LocaleSettings locale) => load switch
    {
        { Made: { } made } => exercise.Load switch
        {
            LoadedBy.TwoDumbbells => Say("work.two", Of(made.Weight, locale)),
            LoadedBy.OnTheBody => Say("work.hung", Of(made.Weight, locale)),
            _ => Of(made.Weight, locale),
        },
        // Lighter than the lightest that there is: the body alone where it is lifted, else the lightest is named by the coach.
        { Target: { } target } when exercise.Load != LoadedBy.OnTheBody => Say("work.lighter", Of(new Weight(Math.Max(0.5m, Math.Round(target.Amount * 2, MidpointRounding.ToZero) / 2), target.Unit), locale)),
        { Reserve: { } reserve } => Say("work.leave", reserve),
        _ => Of(prescription.Effort, locale),
    };

    /// <summary>"20 + 10 + 1.25 a side"; "bar alone" for a bar without plates; empty for what has no sides.</summary>
    public static string Plates(GivenLoad load, Exercise exercise, LocaleSettings locale) => exercise.Load != LoadedBy.Bar || load.Made is not { } made ? "" : Plates(made.PerSide, locale);

    /// <summary>Plates of each side of a bar.</summary>
    public static string Plates(ValueList<decimal> side, LocaleSettings locale) =>
        side.Count == 0 ? Say("work.bar-alone") : Say("work.a-side", string.Join(" + ", side.Select(plate => Number(plate, locale))));

    public static string Number(decimal number, LocaleSettings locale) =>
        number.ToString("0.######", CultureInfo.InvariantCulture).Replace(".", locale.DecimalComma ? "," : ".", StringComparison.Ordinal);
}
