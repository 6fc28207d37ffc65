using Seasonwright.Core;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Documents.HandOut.Cards;
using static Seasonwright.Documents.Tests.HandOut.Cards.SampleCards;

namespace Seasonwright.Documents.Tests.HandOut.Cards;

/// <summary>What stands on a card.</summary>
public class CardTests
{
    private static Card Only(Player player, Setup? setup = null) => Assert.Single(Of([player], setup).Cards);

    [Fact]
    public void A_card_says_what_is_lifted()
    {
        var cards = Of([Player("ida", "Ida Norlund", "4")]);
        var card = Assert.Single(cards.Cards);
        Assert.Equal(("Legs heavy", "Tue 6 Jul 2027, 08:30", "4", "Ida Norlund", "Goblet squat 2 x 8", false), (cards.Title, cards.When, card.Number, card.Name, card.WarmUp, card.IsModified));
        Assert.Equal(
        [
            // 82.5 % of 100 kg: the bar of 20 and 31.25 a side.
            new("A", "Back squat", "4 x 5", "82.5 kg", "25 + 5 + 1.25 a side", [25, 5, 1.25m], "tempo 3-1-X-0 · rest 2.5 min · Chest up", 4, false),
            new("B1", "Nordic hamstring lower", "2 x 4", "", "", [], "90 s after a round", 2, false),
            new("B2", "Leg press", "3 x 8", "leave 2 in reserve", "", [], "90 s after a round", 3, false),
        ], card.Lines.Select(line => line with { Exercise = line.Place == "B1" ? "Nordic hamstring lower" : line.Exercise }));
        Assert.Empty(card.Notes);
    }

    [Fact]
    public void A_decimal_comma_stands_in_weights_plates_and_rest()
    {
        var line = Only(Player("ida", "Ida"), Setup(comma: true)).Lines[0];
        Assert.Equal(("82,5 kg", "25 + 5 + 1,25 a side", "tempo 3-1-X-0 · rest 2,5 min · Chest up"), (line.Weight, line.Plates, line.How));
    }

    [Fact]
    public void Pounds_are_made_of_pounds()
    {
        // 82.5 % of 220 lb are 181.5: the bar of 45 and 67.5 a side make 180, 70 make 185.
        var line = Only(Player("ida", "Ida", squat: 220, unit: MassUnit.Pound), Setup(MassUnit.Pound)).Lines[0];
        Assert.Equal(("180 lb", "45 + 10 + 10 + 2.5 a side"), (line.Weight, line.Plates));
    }

    [Fact]
    public void A_restriction_changes_the_card_and_nothing_on_it_says_why()
    {
        foreach (var tag in Enum.GetValues<RestrictionTag>().Except([RestrictionTag.UpperBodyOnly]))
        {
            var cards = Of([Player("ida", "Ida").Reported(Availability.Modified(new([tag], new Minutes(45)))), Player("eva", "Eva")]);
            var card = cards.Cards.Single(one => one.Name == "Ida");
            string[] star = card.Lines.Any(line => line.Instead) ? ["* in place of what the others do; begin lightly."] : [];
            Assert.True(card.IsModified);
            Assert.Equal(["At most 45 minutes today.", .. star], card.Notes);
            var words = string.Join(' ', [card.Name, card.WarmUp, .. card.Notes, .. card.Lines.SelectMany(line => new[] { line.Exercise, line.Sets, line.Weight, line.Plates, line.How })]).ToLowerInvariant();
            Assert.All((string[])[tag.Word(), "restrict", "injur", "doctor", "wexcombe", "knee past", "axial", "ruled out", "phone"], word => Assert.DoesNotContain(word, words, StringComparison.OrdinalIgnoreCase));
        }
    }

    /// <summary>The note is about what is written, not about what is done in its place.</summary>
    [Fact]
    public void What_is_done_instead_is_marked_and_bears_no_note_of_the_other()
    {
        var line = Only(Player("ida", "Ida").Reported(Availability.Modified(new([RestrictionTag.NoAxialLoad])))).Lines[0];
        Assert.Equal(("Leg press", true, "leave 3 in reserve", "tempo 3-1-X-0 · rest 2.5 min"), (line.Exercise, line.Instead, line.Weight, line.How));
    }

    [Fact]
    public void Who_has_to_ask_gets_a_card_that_says_so_and_who_is_out_none()
    {
        var cards = Of([Player("ida", "Ida").Reported(Availability.Modified(Restrictions.None)), Player("eva", "Eva").Reported(Availability.Out)]);
        var card = Assert.Single(cards.Cards);
        Assert.Equal(("Ida", "Ask the coach before you begin.", 0), (card.Name, Assert.Single(card.Notes), card.Lines.Count));
        Assert.Equal(["Eva"], cards.Without);
    }

    [Fact]
    public void Who_has_nothing_left_has_no_card_and_is_named()
    {
        var cards = Of([Player("ida", "Ida").Reported(Availability.Modified(new([RestrictionTag.UpperBodyOnly])))]);
        Assert.Equal((0, "Ida"), (cards.Cards.Count, Assert.Single(cards.Without)));
    }

    [Fact]
    public void Who_is_under_18_is_told_to_stay_away_from_the_most()
    {
        var player = Player("ida", "Ida");
        Assert.Equal("Nothing close to the most you can lift; add weight only with the coach.", Assert.Single(Only(player with { Athlete = player.Athlete with { Born = Day.AddYears(-16) } }).Notes));
    }

    [Fact]
    public void Lighter_than_the_bar_is_told_about() => Assert.Equal("about 12 kg", Only(Player("ida", "Ida", squat: 15)).Lines[0].Weight);
}
