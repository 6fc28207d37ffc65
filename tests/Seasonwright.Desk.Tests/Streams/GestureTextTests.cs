using Seasonwright.Desk.Streams;

namespace Seasonwright.Desk.Tests.Streams;

/// <summary>A person typed into a form: the field is named, and what is wrong with it, without lines, columns or files.</summary>
public class GestureTextTests
{
    [Theory]
    [InlineData("""{"edit":"setMatch","match":{"id":"m","day":"2027-10-16","kickOff":"25:99"}}""", "match.kickOff", "'25:99' is no time of day. Times are written 18:30.")]
    [InlineData("""{"edit":"setMatch","match":{"id":"m","day":"16.10.2027"}}""", "match.day", "'16.10.2027' is no day of the calendar. Days are written 2027-07-05.")]
    [InlineData("""{"edit":"setPractices","first":"w1","last":"w1","practices":{"count":7.5}}""", "practices.count", "A whole number is expected here.")]
    [InlineData("""{"edit":"setPractices","first":"w1","last":"w1","practices":{"count":3,"rpe":5.3}}""", "practices.rpe", "RPE is given in halves from 0 to 10.")]
    [InlineData("""{"edit":"setEvent","event":{"id":"e","kind":"camp","title":"Camp","days":{"first":"2027-08-06","last":"2027-08-02"},"training":140}}""", "event.days", "The span ends (2027-08-02) before it starts (2027-08-06).")]
    // A script writes null for what is no number, and for an empty field.
    [InlineData("""{"edit":"setPractices","first":"w1","last":"w1","practices":{"count":null}}""", "practices.count", null)]
    [InlineData("""{"edit":"setMatchLoad","load":{"minutes":null,"rpe":8,"friendlyRpe":6}}""", "load.minutes", null)]
    [InlineData("""{"edit":"setMatchLoad","load":{"minutes":80,"rpe":null,"friendlyRpe":6}}""", "load.rpe", null)]
    [InlineData("""{"edit":"setTestDay","testDay":{"id":"t","day":null,"battery":"Jump"}}""", "testDay.day", null)]
    [InlineData("""{"edit":"setTestDay","testDay":{"id":"t","day":"2027-08-02","battery":null}}""", "testDay.battery", null)]
    [InlineData("""{"edit":"setTestDay","testDay":{"id":"t","day":"2027-08-02"}}""", "testDay.battery", null)]
    public void The_field_is_named(string edit, string path, string? finding)
    {
        Assert.Null(GestureText.TryRead($"[{edit}]", out var problem));
        Assert.Equal(new UnreadField(path, finding), problem);
    }

    [Theory]
    [InlineData("[]")]
    [InlineData("[null]")]
    public void What_is_no_list_of_edits_names_no_field(string text)
    {
        Assert.Null(GestureText.TryRead(text, out var problem));
        Assert.Null(problem!.Path);
    }
}
