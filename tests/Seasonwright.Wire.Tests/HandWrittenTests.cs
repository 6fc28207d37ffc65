namespace Seasonwright.Wire.Tests;

/// <summary>What a person gets wrong in a line, and what is said about it.</summary>
public class HandWrittenTests
{
    [Theory]
    [InlineData("""{"edit":"setWeekLoad","first":1,"last":3,"load":2400""", "line 1, column 53: The text ends before it is complete. Take the whole file: a copy may have been cut off.")]
    [InlineData("""{"edit":"setWeekLoad" "first":1}""", "line 1, column 23: This is no JSON: '\"' is invalid after a value. Mend it there, or take a file that Seasonwright wrote.")]
    [InlineData("""{"edit":"setWeekLaod","first":1,"last":3,"load":2400}""", "There is no edit 'setWeekLaod'. Did you mean 'setWeekLoad'? docs/edits.md lists all edits.")]
    [InlineData("""{"edit":"conquerTheLeague"}""", "There is no edit 'conquerTheLeague'. docs/edits.md lists all edits.")]
    [InlineData("""{"first":1,"last":3,"load":2400}""", "The line does not say which edit it is. Give it \"edit\" with one of the names in docs/edits.md.")]
    [InlineData("null", "A line holds one edit, not null. docs/edits.md lists all edits.")]
    [InlineData("""[{"edit":"publish"}]""", "An object { } is expected here.")]
    [InlineData("""{"edit":"setWeekLoad","first":1,"last":3,"laod":2400}""", "There is no field 'laod' here. Take it out, or check its spelling.")]
    [InlineData("""{"edit":"setWeekLoad","first":1,"last":3}""", "The field 'load' is missing. Add it.")]
    [InlineData("""{"edit":"setWeekLoad","first":1,"last":3,"load":1,"load":2}""", "The field 'load' stands twice. Take one of them out.")]
    [InlineData("""{"edit":"setWeekLoad","first":1,"last":3,"load":"2400"}""", "line 1, column 55: In load: A whole number is expected here.")]
    [InlineData("""{"edit":"setWeekLoad","first":1,"last":3,"load":24.5}""", "A whole number is expected here.")]
    [InlineData("""{"edit":"setWeekLoad","first":1,"last":3,"load":-1}""", "The number is out of bounds: 0 to 30000 are possible.")]
    [InlineData("""{"edit":"setWeekLoad","first":1.5,"last":3,"load":1}""", "In first: A whole number is expected here.")]
    [InlineData("""{"edit":"setWeekLoad","first":"week one","last":3,"load":1}""", "'week one' is no id")]
    [InlineData("""{"edit":"setWeekKind","first":1,"last":3,"kind":"hard"}""", "In kind: 'hard' is not one of its words. They are: introductory, building, overload,")]
    [InlineData("""{"edit":"setMatch","match":{"id":"m1","day":"5.9.2027"}}""", "In match.day: '5.9.2027' is no day of the calendar. Days are written 2027-07-05.")]
    [InlineData("""{"edit":"setMatch","match":{"id":"m1","day":"2027-02-29"}}""", "'2027-02-29' is no day of the calendar.")]
    [InlineData("""{"edit":"setMatch","match":{"id":"Größe","day":"2027-09-05","kickOff":"6pm"}}""", "line 1, column 41: In match.id: 'Größe' is no id")]
    [InlineData("""{"edit":"setMatch","match":{"id":"m1","day":"2027-09-05","kickOff":"6pm"}}""", "'6pm' is no time of day. Times are written 18:30.")]
    [InlineData("""{"edit":"setMatch","match":null}""", "The field 'match' may not be null. Leave the field out, or give it a value.")]
    [InlineData("""{"edit":"setMatch","match":7}""", "In match: An object { } is expected here.")]
    [InlineData("""{"edit":"setEvent","event":{"id":"e","kind":"camp","title":"Camp","days":{"first":"2027-09-05","last":"2027-09-01"}}}""", "The span ends (2027-09-01) before it starts (2027-09-05).")]
    [InlineData("""{"edit":"setPractices","first":1,"last":1,"practices":{"count":4,"rpe":5.3}}""", "RPE is given in halves from 0 to 10.")]
    [InlineData("""{"edit":"lockWeeks","first":1,"last":1,"locked":"yes"}""", "In locked: true or false is expected here.")]
    [InlineData("""{"edit":"setCells","cells":{"track":"room"}}""", "A list [ ] is expected here.")]
    [InlineData("""{"edit":"setCells","cells":[null]}""", "null is not possible here.")]
    [InlineData("""{"edit":"setCells","cells":[{"track":"room","place":"Monday","value":"x"}]}""", "'Monday' is neither a week nor a day.")]
    [InlineData("""{"edit":"adoptSeason","from":"x","facts":{"weather":{"":1}}}""", "'weather' is no family of places this version knows.")]
    [InlineData("""{"edit":"adoptSeason","from":"x","facts":{"week.load":{"w1":1,"w1":2}}}""", "'week.load/w1' stands twice.")]
    public void Is_said_with_its_place_and_how_to_mend_it(string line, string said)
    {
        Assert.Null(EditLines.Read(line, Told.Page().Season, out var problem));
        Assert.Contains(said, problem!.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("  # {\"edit\":\"publish\"}")]
    public void Empty_lines_and_remarks_hold_no_edit(string line)
    {
        Assert.Null(EditLines.Read(line, Told.Page().Season, out var problem));
        Assert.Null(problem);
    }
}
