using Seasonwright.Core.Calendar;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Events;
using Seasonwright.Documents.Read.Fixtures;

namespace Seasonwright.Documents.Tests.Read;

/// <summary>Remarks on somebody's health are held back by every reader of lists, and words of halls, places and days are not. Common practice, no source; people and places are invented.</summary>
public class HealthTests
{
    [Theory]
    [InlineData("low back, saw Dr. Holm")]
    [InlineData("Maren: knee pain again")]
    [InlineData("Sunniva shoulder sore (no throwing)")]
    [InlineData("Hanka ankle, out until March")]
    [InlineData("hip: physiotherapist on Tuesday")]
    [InlineData("collar bone, doubtful")]
    [InlineData("Tilde: back spasms")]
    [InlineData("Rücken, war beim Arzt")]
    [InlineData("Knieschmerzen")]
    [InlineData("genou gauche, vue par le médecin")]
    [InlineData("dolor de rodilla")]
    [InlineData("smerter i kne")]
    [InlineData("38912verletzt")]
    public void Details_are_in_no_row_and_no_skipped_line(string detail)
    {
        Assert.Null(Fixtures(detail).Rows[0].Remarks);
        Assert.DoesNotContain(detail, Said(Fixtures(detail)), StringComparison.Ordinal);
        Assert.Null(Events(detail).Rows[0].Note);
        Assert.DoesNotContain(detail, Said(Events(detail)), StringComparison.Ordinal);
        Assert.Equal("", Skipped.Of(7, detail, "remark").Text);
    }

    [Theory]
    [InlineData("Back row seats for parents")]
    [InlineData("at Knee Park")]
    [InlineData("Knee Park, Dr.-Müller-Halle, hall closed")]
    [InlineData("hall closed until further notice")]
    [InlineData("Team back from camp")]
    [InlineData("Doctor on duty: Dr. Holm")]
    [InlineData("medical staff at door 3")]
    [InlineData("shoulder to shoulder: charity match")]
    [InlineData("bus at the foot of the hill, out at 14:00")]
    [InlineData("limited seats; recovery session on Sunday")]
    [InlineData("no lifting, gym floor renewed")]
    public void Words_of_halls_places_and_days_are_kept(string words)
    {
        Assert.Equal(words, Fixtures(words).Rows[0].Remarks);
        Assert.Equal(words, Events(words).Rows[0].Note);
        Assert.Equal(words, Skipped.Of(7, words, "remark").Text);
    }

    // Beside a match, and in a line of its own.
    private static FixtureList Fixtures(string words) => FixtureReader.Read(SourceText.OfText("list", $"Date\tOpponent\tH/A\tNotes\n2026-09-05\tKalnes HK\tH\t{words}\n2026-09-12\tBrovik\tA\t\n{words}\n"), new FixtureOptions());

    private static EventList Events(string words) => EventReader.Read(SourceText.OfText("list", $"What\tFrom\tTo\tNotes\nCamp\t2026-09-05\t2026-09-07\t{words}\nExams\t2026-11-23\t2026-12-04\t\n{words}\n"), new EventReading(Season: new DaySpan(new(2026, 6, 28), new(2027, 6, 27))));

    private static string Said(FixtureList list) => string.Join('\n', list.Skipped.Select(skipped => skipped.Text + skipped.Why).Concat(list.Questions.Select(question => question.Text)).Concat(list.Rows.Select(row => row.ToString())));

    private static string Said(EventList list) => string.Join('\n', list.Skipped.Select(skipped => skipped.Text + skipped.Why).Concat(list.Questions.Select(question => question.Text)).Concat(list.Rows.Select(row => row.ToString())));
}
