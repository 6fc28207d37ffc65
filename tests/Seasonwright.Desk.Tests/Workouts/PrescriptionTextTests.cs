using CsCheck;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Desk.Workouts;

namespace Seasonwright.Desk.Tests.Workouts;

/// <summary>A prescription as coaches type it. The spellings are from memory, no source.</summary>
public class PrescriptionTextTests
{
    private static readonly LocaleSettings Point = Setup.Empty(new("team")).Locale with { DecimalComma = false };

    [Theory]
    [InlineData("4x5 80%", "4x5 80%")]
    [InlineData("3x8 r2", "3x8 r2")]
    [InlineData("3x30s", "3x30s")]
    [InlineData("2x20m", "2x20m")]
    [InlineData("3x10 20kg", "3x10 20 kg")]
    [InlineData("4x3 0.5 m/s -20%", "4x3 0.5 m/s -20%")]
    // Zourdos et al. 2016: RPE 8 is two repetitions in reserve, 9.5 none or one.
    [InlineData("3x6 rpe 8", "3x6 r2")]
    [InlineData("3x6 rpe 9.5", "3x6 r0")]
    [InlineData("2x8 50% bm", "2x8 50% bm")]
    [InlineData("4x5 80% 3-1-X-0", "4x5 80% 3-1-X-0")]
    [InlineData("4x5 77,5%", "4x5 77.5%")]
    public void What_its_page_names_is_read(string typed, string plain) => Assert.Equal(plain, Said(typed));

    [Theory]
    [InlineData("4x5", "4x5")]
    [InlineData("  4 x 5  ", "4x5")]
    [InlineData("4X5", "4x5")]
    [InlineData("4×5 80%", "4x5 80%")]
    [InlineData("4x5@80%", "4x5 80%")]
    [InlineData("4x5 @ 80 %", "4x5 80%")]
    [InlineData("4x5, 80%", "4x5 80%")]
    [InlineData("4x5; 80%", "4x5 80%")]
    [InlineData("5x3 102,5kg", "5x3 102.5 kg")]
    [InlineData("5x3 @ 102.5 kg", "5x3 102.5 kg")]
    [InlineData("5x5 225lb", "5x5 225 lb")]
    [InlineData("5x5 225 lbs", "5x5 225 lb")]
    [InlineData("3x8 RIR 2", "3x8 r2")]
    [InlineData("3x8 rir2", "3x8 r2")]
    [InlineData("3x8 2 RIR", "3x8 r2")]
    [InlineData("3x8, 2 in reserve", "3x8 r2")]
    [InlineData("3x8 leave 2", "3x8 r2")]
    [InlineData("3x8 2 left", "3x8 r2")]
    [InlineData("3x8 reps r2", "3x8 r2")]
    [InlineData("1x1 rep 100%", "1x1 100%")]
    [InlineData("3x6 RPE8", "3x6 r2")]
    [InlineData("3x6 @ rpe 7,5", "3x6 r2")]
    [InlineData("3x30 sec", "3x30s")]
    [InlineData("2x10min", "2x600s")]
    [InlineData("6x30 m", "6x30m")]
    [InlineData("4x3 0,45m/s", "4x3 0.45 m/s")]
    [InlineData("4x3 0.5 m/s stop 20%", "4x3 0.5 m/s -20%")]
    [InlineData("4x3 0.5m/s-20", "4x3 0.5 m/s -20%")]
    [InlineData("4x5 tempo 3-0-1-0", "4x5 3-0-1-0")]
    [InlineData("4x5 3-0-1-0 r2", "4x5 r2 3-0-1-0")]
    [InlineData("2x8 50%BM", "2x8 50% bm")]
    // Neither is said: per cent, or kilograms?
    [InlineData("4x5 80", null)]
    [InlineData("3x8 @8", null)]
    // A card cannot name two ends.
    [InlineData("3x8-10", null)]
    [InlineData("4x5 80-85%", null)]
    [InlineData("3x8 r2-3", null)]
    [InlineData("3x6 rpe 7-8", null)]
    // Two things at once.
    [InlineData("4x5 80% -20%", null)]
    [InlineData("3x8 r2%", null)]
    [InlineData("3x8 rpe 8 kg", null)]
    [InlineData("4x5 80% r2", null)]
    [InlineData("3x5+1", null)]
    [InlineData("4x5x80%", null)]
    // Out of bounds.
    [InlineData("0x5", null)]
    [InlineData("3x0", null)]
    [InlineData("21x5", null)]
    [InlineData("3x101", null)]
    [InlineData("1x3601s", null)]
    [InlineData("1x61min", null)]
    [InlineData("4x5 19%", null)]
    [InlineData("4x5 131%", null)]
    [InlineData("3x8 r11", null)]
    [InlineData("3x8 rpe 11", null)]
    [InlineData("3x8 rpe 7.25", null)]
    [InlineData("3x5 0kg", null)]
    [InlineData("3x5 -20kg", null)]
    [InlineData("3x5 1001kg", null)]
    [InlineData("4x3 5 m/s", null)]
    [InlineData("4x3 0.5 m/s -70%", null)]
    [InlineData("4x5 3-1-X", null)]
    [InlineData("4x5 99-1-1-1", null)]
    // No prescription.
    [InlineData("", null)]
    [InlineData("x", null)]
    [InlineData("4x", null)]
    [InlineData("x5", null)]
    [InlineData("80%", null)]
    [InlineData("3xAMRAP", null)]
    [InlineData("3x8/side", null)]
    [InlineData("3x8 each", null)]
    [InlineData("3 sets of 8", null)]
    [InlineData("3x8 heavy", null)]
    [InlineData("-3x8", null)]
    [InlineData("3x8 1e2%", null)]
    [InlineData("٣x٨", null)]
    public void Others_are_read_as_they_are_meant_or_not_at_all(string typed, string? plain) => Assert.Equal(plain, Said(typed));

    [Fact]
    public void What_is_written_out_is_read_as_the_same()
    {
        var efforts = Gen.OneOf(Gen.Const(Effort.Free), Gen.Int[20_000, 130_000].Select(n => Effort.OfMax(n / 1_000m)), Gen.Int[0, 10_000].Select(n => Effort.Reserve(n / 1_000m)), Gen.Int[1, 300].Select(n => new Effort(EffortKind.OfBodyMass, n)),
            Gen.Select(Gen.Int[50, 4_000], Gen.Nullable(Gen.Int[5, 60]), (n, loss) => new Effort(EffortKind.Velocity, n / 1_000m, null, loss is { } some ? new Percent(some) : null)),
            Gen.Select(Gen.Int[1, 1_000_000_000], Gen.Enum<MassUnit>(), (n, unit) => new Effort(EffortKind.Fixed, null, new Weight(n / 1_000_000m, unit))));
        var tempos = Gen.Select(Gen.Int[1, 30], Gen.Int[0, 30], Gen.Nullable(Gen.Int[0, 30]), Gen.Int[0, 30], (down, bottom, up, top) => new Tempo(down, bottom, up, top));
        Gen.Select(Gen.Int[1, 20], Gen.Enum<WorkUnit>().SelectMany(unit => Gen.Int[1, Prescription.MostOf(unit)].Select(amount => (amount, unit))), efforts, Gen.Nullable(tempos), Gen.Bool).Sample(drawn =>
        {
            var (sets, (amount, unit), effort, tempo, comma) = drawn;
            var prescription = new Prescription(sets, amount, unit, effort, tempo);
            Assert.Equal(prescription, PrescriptionText.Read(PrescriptionText.Of(prescription, Point with { DecimalComma = comma })));
        }, iter: 2_000);
    }

    /// <summary>Nothing that can be typed stops the page.</summary>
    [Fact]
    public void Any_text_is_read_or_not() => Gen.OneOf(Gen.String, Gen.String["0123456789x%.,-@rpeikgmsb/ "].Select(text => "4x5 " + text)).Sample(text =>
    {
        if (PrescriptionText.Read(text) is not { } read) return;
        Assert.InRange(read.Sets, 1, Prescription.MostSets);
        Assert.InRange(read.Amount, 1, Prescription.MostOf(read.Unit));
    }, iter: 2_000);

    private static string? Said(string typed) => PrescriptionText.Read(typed) is { } read ? PrescriptionText.Of(read, Point) : null;
}
