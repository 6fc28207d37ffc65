using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Core.Tests.Facts;

public class SubjectTests
{
    [Theory]
    [InlineData("week.load", "w1", true)]
    [InlineData("week.load", "", false)]
    [InlineData("week.load", "w 1", false)]
    [InlineData("week.load", "w1:w2", false)]
    [InlineData("frame", "", true)]
    [InlineData("frame", "x", false)]
    [InlineData("week.emphasis", "w1:power", true)]
    [InlineData("week.emphasis", "w1", false)]
    [InlineData("group.emphasis", "g1:w1:power", true)]
    [InlineData("track.cell", "t1:w=w1", true)]
    [InlineData("track.cell", "t1:d=2027-07-05", true)]
    [InlineData("track.cell", "t1:d=2027-7-5", false)]
    [InlineData("track.cell", "t1:d=", false)]
    [InlineData("track.cell", "t1:x=1", false)]
    [InlineData("publication", "12", true)]
    [InlineData("publication", "012", false)]
    [InlineData("publication", "-1", false)]
    [InlineData("publication", "99999999999999999999", false)]
    public void Subjects_of_a_season(string facet, string subject, bool fits) =>
        Assert.Equal(fits, SeasonFacets.All.Single(some => some.Name == facet).IsSubject(subject));

    [Theory]
    [InlineData("ramp:most", true)]
    [InlineData("ramp", false)]
    [InlineData("ramp:", false)]
    [InlineData("a:b:c", false)]
    [InlineData("a b:c", false)]
    public void Subjects_of_a_rule(string subject, bool fits) => Assert.Equal(fits, SetupFacets.RuleParameter.IsSubject(subject));

    [Fact]
    public void A_rule_parameter_that_could_not_be_read_back_cannot_be() => Assert.Throws<FormatException>(() => new RuleParameter("a:b", "c"));

    [Fact]
    public void Families_have_names_of_their_own()
    {
        var names = SeasonFacets.All.Concat(SetupFacets.All).Concat(Core.Rooms.ClubFacets.All).Select(facet => facet.Name).ToList();
        Assert.Equal(names.Count, names.Distinct(StringComparer.Ordinal).Count());
    }

    [Theory]
    [InlineData("a", true)]
    [InlineData("0198f3b2-7c1e.A_z", true)]
    [InlineData("", false)]
    [InlineData("ä", false)]
    [InlineData("a/b", false)]
    [InlineData("a:b", false)]
    [InlineData(null, false)]
    public void Ids(string? text, bool isId)
    {
        Assert.Equal(isId, IdText.IsId(text));
        if (!isId) Assert.Throws<FormatException>(() => new WeekId(text!));
    }

    [Fact]
    public void Ids_have_a_longest() => Assert.True(IdText.IsId(new string('a', 64)) && !IdText.IsId(new string('a', 65)));

    [Theory]
    [InlineData("week.load/w1", "week.load", "w1")]
    [InlineData("frame", "frame", "")]
    [InlineData("a/b/c", "a", "b/c")]
    public void Keys_read_back(string text, string facet, string subject)
    {
        Assert.Equal(new Key(facet, subject), Key.Parse(text));
        Assert.Equal(text, Key.Parse(text).ToString());
    }

    [Fact]
    public void A_key_names_a_family() => Assert.Throws<FormatException>(() => Key.Parse("/w1"));
}
