using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Says what this team does in a normal hard week.</summary>
public sealed record SetUsualWeek(UsualWeek Week) : SetupEdit
{
    public override string Describe(Setup setup) => Sentences.Say("did.set-usual-week");

    internal override void Decide(Draft draft)
    {
        Check(draft, Week);
        draft.Set(SetupFacets.UsualWeek, default, Week);
    }

    internal static void Check(Draft draft, UsualWeek week)
    {
        foreach (var (sessions, field) in new[] { (week.Practices, "practices"), (week.Gym, "gym"), (week.Conditioning, "conditioning") })
            SetPractices.CheckCount(draft, sessions.Count, $"usualWeek.{field}");
    }
}
