using Seasonwright.Core.Quantities;

namespace Seasonwright.Core.Seasons;

/// <summary>A run at home: steady where it is one, else intervals.</summary>
/// <param name="Repetitions">1 to 40.</param>
/// <param name="Amount">Of each: seconds 10 to 7,200 or metres 20 to 20,000.</param>
/// <param name="Unit">Seconds or metres.</param>
/// <param name="Speed">Per cent of the player's own running speed, 50 to 120.</param>
/// <param name="Rest">Seconds after each but the last, 0 to 900, walking.</param>
/// <param name="More">Per cent of the first week's that every week adds, 0 to 20: repetitions, of a steady run its length.</param>
public sealed record HomeRun(int Repetitions, int Amount, WorkUnit Unit, Percent Speed, int Rest = 0, int More = 0)
{
    public const int MostRepetitions = 40, LeastSeconds = 10, MostSeconds = 7_200, LeastMetres = 20, MostMetres = 20_000, LeastSpeed = 50, MostSpeed = 120, MostRest = 900, MostMore = 20;

    /// <summary>A steady run grows by these: half minutes, and 50 metres.</summary>
    private const int SecondsStep = 30, MetresStep = 50;

    /// <summary>All repetitions together, without rests.</summary>
    public const int MostSecondsInAll = 7_200, MostMetresInAll = 20_000;

    public bool IsSteady => Repetitions == 1;

    /// <summary>No faster than so many per cent of the own speed.</summary>
    public HomeRun AtMost(int percent) => Speed.Value > percent ? this with { Speed = new(percent) } : this;

    /// <summary>As it is run in a week of the programme.</summary>
    /// <param name="week">From 0.</param>
    public HomeRun In(int week)
    {
        var grown = 1 + week * More / 100m;
        if (More == 0 || week == 0) return this;
        if (!IsSteady) return this with { Repetitions = Math.Min(MostRepetitions, (int)Math.Round(Repetitions * grown, MidpointRounding.AwayFromZero)) };
        var (step, most) = Unit == WorkUnit.Metres ? (MetresStep, MostMetres) : (SecondsStep, MostSeconds);
        return this with { Amount = Math.Clamp((int)Math.Round(Amount * grown / step, MidpointRounding.AwayFromZero) * step, Amount, most) };
    }

    /// <summary>How hard it feels, for who has no test: a first guess by the per cent. Common practice, no source.</summary>
    public Rpe Rpe => new(Speed.Value switch { <= 70 => 3, <= 80 => 4, <= 90 => 6, <= 100 => 8, _ => 9 });
}
