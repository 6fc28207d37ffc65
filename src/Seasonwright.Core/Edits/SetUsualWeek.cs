using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Edits;

/// <summary>Says what this team does in a normal hard week.</summary>
public sealed record SetUsualWeek(UsualWeek Week) : SetupEdit
{
    public override string Describe(Setup setup) => Sentences.Say("did.set-usual-week");

    internal override void Decide(Draft draft)
    {
        foreach (var (sessions, field) in new[] { (Week.Practices, "practices"), (Week.Gym, "gym"), (Week.Conditioning, "conditioning") })
            if (sessions.Count is < 0 or > SetPractices.Most) draft.Refuse("practices-count", $"usualWeek.{field}", sessions.Count, SetPractices.Most);
        if (!draft.IsRefused) draft.Set(SetupFacets.UsualWeek, default, Week);
    }
}
