using Seasonwright.Core.Seasons;
using Seasonwright.Core.Squad;

namespace Seasonwright.Truth.Tests.Strength;

/// <summary>
/// Source: Berthon P, Fellmann N, Bedu M, Beaune B, Dabonneville M, Coudert J, Chamoux A 1997, A 5-min running field test as a measurement of maximal aerobic velocity,
/// Eur J Appl Physiol 75:233-238: 48 men ran 17.1 (SD 2.2) km/h over 5 min; on the treadmill their maximal aerobic velocity was 16.9 (SD 2.6) km/h, r = 0.94 between the two.
/// </summary>
public class RunTestTruth
{
    /// <summary>The mean speed of a run of 5 min is within two per cent of what the treadmill says, and the printed speed within a rounding.</summary>
    [Fact]
    public void A_run_of_five_minutes_tells_the_maximal_aerobic_speed()
    {
        const decimal Field = 17.1m, Treadmill = 16.9m;
        var test = new RunTest(Guid.Empty, new("one"), new(1997, 3, 1), (int)(Field * 1_000 / 12), 300, default);
        var kilometresAnHour = test.Speed * 3.6m;
        Assert.InRange(kilometresAnHour, Field - 0.05m, Field + 0.05m);
        Assert.InRange(kilometresAnHour / Treadmill, 0.98m, 1.02m);
    }
}
