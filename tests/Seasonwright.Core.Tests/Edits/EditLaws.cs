using System.Collections.Concurrent;
using CsCheck;
using Seasonwright.Core.Edits;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Tests.Drawn;

namespace Seasonwright.Core.Tests.Edits;

/// <summary>What holds for every edit of every kind, accepted or refused.</summary>
public class EditLaws
{
    public static TheoryData<string> SeasonKinds => [.. AnyEdit.OfSeason.Keys];

    public static TheoryData<string> ClubKinds => [.. AnyEdit.OfClub.Keys];

    public static TheoryData<string> SetupKinds => [.. AnyEdit.OfSetup.Keys];

    [Fact]
    public void Every_kind_of_edit_is_drawn()
    {
        Assert.Equal(KindsOf<SeasonEdit>(), AnyEdit.OfSeason.Keys.Order(StringComparer.Ordinal), StringComparer.Ordinal);
        Assert.Equal(KindsOf<ClubEdit>(), AnyEdit.OfClub.Keys.Order(StringComparer.Ordinal), StringComparer.Ordinal);
        Assert.Equal(KindsOf<SetupEdit>(), AnyEdit.OfSetup.Keys.Order(StringComparer.Ordinal), StringComparer.Ordinal);

        static IEnumerable<string> KindsOf<TEdit>() =>
            typeof(Edit).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(TEdit))).Select(type => type.Name).Order(StringComparer.Ordinal);
    }

    [Theory]
    [MemberData(nameof(SeasonKinds))]
    public void A_season_edit_is_decided_by_the_book(string kind)
    {
        var answers = new ConcurrentDictionary<string, int>(StringComparer.Ordinal);
        // Two kinds are for seasons that have not been started.
        var seasons = kind is nameof(StartSeason) or nameof(AdoptSeason) ? Gen.OneOf(Gen.Const(History.Nothing), AnySeason.Season) : AnySeason.Season;
        Gen.Select(seasons, AnyEdit.OfSeason[kind], AnySeason.Setup, AnySeason.Young).Sample((season, edit, setup, other) =>
        {
            var decision = Decider.Decide(season, edit);
            answers.AddOrUpdate(decision.GetType().Name, 1, (_, count) => count + 1);
            CheckDecision(season.Facts, decision, Decider.Decide(season, edit));
            if (decision is Accepted accepted)
            {
                var after = season.With(accepted.Step);
                Assert.Equal(season, after.With(accepted.Step.Inverse));
                Whole.Check(after, setup);
                // A file may hold marks whose phase an undo took away; edits leave none.
                if (edit is not AdoptSeason) Whole.CheckRuns(after);
            }
            // The history may name an edit in the words of a season that has gone on since.
            Assert.False(string.IsNullOrWhiteSpace(edit.Describe(season, setup)));
            Assert.NotNull(edit.Describe(other, setup));
            Assert.NotNull(edit.Describe(History.Nothing, Setup.Empty(new("none"))));
        }, iter: 600);
        // A law that never met an accepted edit would say nothing. Some kinds are accepted about once in thirty, so 100 draws were too few.
        Assert.True(answers.GetValueOrDefault(nameof(Accepted)) > 0, $"No {kind} was ever accepted.");
    }

    [Theory]
    [MemberData(nameof(SetupKinds))]
    public void A_setup_edit_is_decided_by_the_book(string kind)
    {
        var accepted = 0;
        Gen.Select(AnySeason.Setup, AnyEdit.OfSetup[kind]).Sample((setup, edit) =>
        {
            var decision = Decider.Decide(setup, edit);
            CheckDecision(setup.Facts, decision, Decider.Decide(setup, edit));
            Assert.False(string.IsNullOrWhiteSpace(edit.Describe(setup)));
            if (decision is not Accepted { Step: var step }) return;
            Interlocked.Increment(ref accepted);
            var after = setup.With(step);
            Assert.Equal(setup, after.With(step.Inverse));
            Assert.NotEmpty(after.Qualities);
            Assert.True(after.ReferenceWeek.Au > 0);
            Assert.NotNull(after.Locale);
        }, iter: 800);
        // Of the fourteen kinds one is accepted about once in a hundred: 200 draws were too few now and then.
        Assert.True(accepted > 0, $"No {kind} was ever accepted.");
    }

    [Theory]
    [MemberData(nameof(ClubKinds))]
    public void A_club_edit_is_decided_by_the_book(string kind)
    {
        var accepted = 0;
        Gen.Select(AnySeason.Club, AnyEdit.OfClub[kind]).Sample((club, edit) =>
        {
            var decision = Decider.Decide(club, edit);
            CheckDecision(club.Facts, decision, Decider.Decide(club, edit));
            Assert.False(string.IsNullOrWhiteSpace(edit.Describe(club)));
            if (decision is not Accepted { Step: var step }) return;
            Interlocked.Increment(ref accepted);
            var after = club.With(step);
            Assert.Equal(club, after.With(step.Inverse));
            Assert.Equal(after.Facilities.Count(), after.Facilities.Select(one => one.Room.Name).Distinct(StringComparer.OrdinalIgnoreCase).Count());
        }, iter: 200);
        Assert.True(accepted > 0, $"No {kind} was ever accepted.");
    }

    [Fact]
    public void Replaying_the_steps_gives_the_season() => AnySeason.History.Sample(history =>
    {
        Assert.Equal(history.Season, history.Steps.Aggregate(History.Nothing, (season, step) => season.With(step)));
        Assert.Equal(history.Season, History.Nothing.With(history.Steps.Aggregate(Step.Nothing, (sum, step) => sum.Then(step))));
        Assert.Equal(history.Season.GetHashCode(), history.Steps.Aggregate(History.Nothing, (season, step) => season.With(step)).GetHashCode());
    }, iter: 200);

    private static void CheckDecision(FactSet before, Decision decision, Decision again)
    {
        switch (decision)
        {
            case Accepted accepted:
                Assert.Equal(accepted.Step, Assert.IsType<Accepted>(again).Step);
                Assert.Equal(accepted.Step.Changes.Select(change => change.Key).Distinct().Order(), accepted.Step.Changes.Select(change => change.Key));
                Assert.All(accepted.Step.Changes, change => Assert.Equal(before[change.Key], change.Before));
                Assert.All(accepted.Step.Changes, change => Assert.NotEqual(change.Before, change.After));
                Assert.Empty(accepted.Reads.Intersect(accepted.Step.Changes.Select(change => change.Key)));
                break;
            case Refused refused:
                Assert.NotEmpty(refused.Reasons);
                Assert.Equal(refused, again);
                Assert.All(refused.Reasons, reason => Assert.True(reason.Id.Length > 0 && reason.Subject.Length > 0 && reason.Sentence.EndsWith('.')));
                break;
        }
    }
}
