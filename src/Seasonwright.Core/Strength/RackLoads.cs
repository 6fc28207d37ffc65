using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Strength;

/// <summary>Every weight that can be made at one rack of a gym, and with its dumbbells, kettlebells and machines. Made once and asked for every set of a squad.</summary>
public sealed class RackLoads
{
    private readonly Gym gym;
    private readonly LoadableTotals? bar, trapBar;
    private readonly LoadRounding rounding;

    private RackLoads(RackLoads other, LoadRounding rounding) => (gym, Rack, bar, trapBar, this.rounding) = (other.gym, other.Rack, other.bar, other.trapBar, rounding);

    /// <param name="rack">Null for a gym without a rack: nothing that a bar loads can be made.</param>
    private RackLoads(Gym gym, GymRack? rack)
    {
        (this.gym, Rack) = (gym, rack);
        rounding = gym.NeverAbove ? LoadRounding.Down : LoadRounding.Nearest;
        if (rack is null) return;
        var plates = new PlateSet(rack.Bar.Unit, rack.Plates.Select(plate => new PlatePair(plate.Mass, plate.Pairs)), rack.Collar);
        bar = LoadableTotals.Of(new Bar(rack.Bar), plates);
        trapBar = gym.TrapBar is { } heavier ? LoadableTotals.Of(new Bar(heavier), plates) : bar;
    }

    public GymRack? Rack { get; }

    /// <summary>The same weights, never one above its target, whatever the gym says.</summary>
    public RackLoads NeverAbove => new(this, LoadRounding.Down);

    /// <summary>Of the first rack that is not broken.</summary>
    public static RackLoads Of(Gym gym) => new(gym, gym.Racks.FirstOrDefault(rack => !rack.IsBroken));

    public static RackLoads Of(Gym gym, GymRack rack) => new(gym, rack);

    /// <summary>The weight that stands for a target, in the unit of what it is made with. Null where nothing as light can be made, or the gym does not have what it is made with.</summary>
    public MadeWeight? Make(Exercise exercise, Weight target) => exercise.Load switch
    {
        LoadedBy.Bar => (exercise.Equipment.Contains(Equipment.TrapBar) ? trapBar : bar)?.Load(target.In(Rack!.Bar.Unit), rounding) is { } loading ? new(new Weight(loading.Total, Rack.Bar.Unit), loading.PerSide) : null,
        LoadedBy.TwoDumbbells or LoadedBy.OneDumbbell => Step(gym.Dumbbells, target),
        LoadedBy.Kettlebell => Step(gym.Kettlebells, target),
        LoadedBy.Stack => gym.StackStep is { } step ? Step(Stack(step), target) : null,
        LoadedBy.Sled or LoadedBy.OnTheBody => Hung(target),
        _ => new(target, []),
    };

    /// <summary>Every weight that an exercise can be loaded with, the lightest first; none where nothing is loaded, or nothing is there to load it with.</summary>
    public ValueList<MadeWeight> Ladder(Exercise exercise) => exercise.Load switch
    {
        LoadedBy.Bar => (exercise.Equipment.Contains(Equipment.TrapBar) ? trapBar : bar) is { } totals ? [.. totals.All.Select(total => new MadeWeight(new Weight(total, Rack!.Bar.Unit), totals.Load(total, LoadRounding.Down)!.PerSide))] : [],
        LoadedBy.TwoDumbbells or LoadedBy.OneDumbbell => Steps(gym.Dumbbells),
        LoadedBy.Kettlebell => Steps(gym.Kettlebells),
        LoadedBy.Stack => gym.StackStep is { } step ? Steps(Stack(step)) : [],
        LoadedBy.Sled or LoadedBy.OnTheBody => bar is null ? [] : [.. bar.All.Where(total => total > bar.Empty).Select(total => new MadeWeight(new Weight((total - bar.Empty) / 2, Rack!.Bar.Unit), []))],
        _ => [],
    };

    private const int Pins = 40;

    private static WeightSteps Stack(Weight step) => new(step.Amount, step.Amount * Pins, step.Amount, step.Unit);

    private static ValueList<MadeWeight> Steps(WeightSteps? steps) => steps is null ? []
        : [.. Enumerable.Range(0, (int)((steps.To - steps.From) / steps.Step) + 1).Select(at => new MadeWeight(new Weight(steps.From + at * steps.Step, steps.Unit), []))];

    /// <summary>On a belt, in a vest or on a sled: plates of one side of the rack.</summary>
    private MadeWeight? Hung(Weight target) => bar?.Load(bar.Empty + 2 * target.In(Rack!.Bar.Unit), rounding) is { PerSide: { Count: > 0 } plates } ? new(new Weight(plates.Sum(), Rack.Bar.Unit), []) : null;

    private MadeWeight? Step(WeightSteps? steps, Weight target) => steps is not null
        && new DumbbellSteps(steps.From, steps.To, steps.Step, steps.Unit).Load(target.In(steps.Unit), rounding) is { } amount ? new(new Weight(amount, steps.Unit), []) : null;
}

/// <summary>A weight as it is made.</summary>
/// <param name="PerSide">Plates on each side of a bar, heaviest first, in the unit of the weight; none for what has no sides.</param>
public sealed record MadeWeight(Weight Weight, ValueList<decimal> PerSide);
