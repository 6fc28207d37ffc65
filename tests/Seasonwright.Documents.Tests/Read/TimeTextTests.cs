using Seasonwright.Documents.Read.Times;

namespace Seasonwright.Documents.Tests.Read;

public class TimeTextTests
{
    [Theory]
    [InlineData("18:00", 18, 0)]
    [InlineData("19.30", 19, 30)]
    [InlineData("9.00", 9, 0)]
    [InlineData("1930", 19, 30)]
    [InlineData("18:00:00", 18, 0)]
    [InlineData("18h", 18, 0)]
    [InlineData("18h30", 18, 30)]
    [InlineData("11 Uhr", 11, 0)]
    [InlineData("19.30 Uhr", 19, 30)]
    [InlineData("kl. 19.30", 19, 30)]
    [InlineData("7:30 PM", 19, 30)]
    [InlineData("7:30PM", 19, 30)]
    [InlineData("7 PM", 19, 0)]
    [InlineData("2.30pm", 14, 30)]
    [InlineData("5.30 p.m.", 17, 30)]
    [InlineData("12:00 PM", 12, 0)]
    [InlineData("noon", 12, 0)]
    [InlineData("Mittag", 12, 0)]
    [InlineData("+17:00", 17, 0)]
    [InlineData("18:00–19:30", 18, 0)]
    [InlineData("3-4pm", 15, 0)]
    [InlineData("11-1pm", 11, 0)]
    public void A_time_is_read(string cell, int hour, int minute)
    {
        var reading = TimeText.Read(cell);
        Assert.Equal((TimeSense.Known, new TimeOnly(hour, minute)), (reading.Sense, reading.Time));
    }

    [Theory]
    [InlineData("", TimeSense.Empty)]
    [InlineData("TBD", TimeSense.Unknown)]
    [InlineData("tbc", TimeSense.Unknown)]
    [InlineData("offen", TimeSense.Unknown)]
    [InlineData("?", TimeSense.Unknown)]
    [InlineData("7:30 AM?", TimeSense.Doubtful)]
    [InlineData("ca. 18:00", TimeSense.Doubtful)]
    [InlineData("12:15 AM", TimeSense.JustAfterMidnight)]
    [InlineData("n.t.b.", TimeSense.Unknown)]
    [InlineData("0:00", TimeSense.Midnight)]
    [InlineData("24:00", TimeSense.Midnight)]
    [InlineData("=A1", TimeSense.Unreadable)]
    [InlineData("24:30", TimeSense.Unreadable)]
    [InlineData("7", TimeSense.Unreadable)]
    [InlineData("13 pm", TimeSense.Unreadable)]
    [InlineData("after lunch", TimeSense.Unreadable)]
    [InlineData("31:24", TimeSense.Unreadable)]
    public void What_is_no_plain_time_says_so(string cell, TimeSense sense) => Assert.Equal(sense, TimeText.Read(cell).Sense);

    [Fact]
    public void A_span_has_an_end_and_a_sign_is_told()
    {
        Assert.Equal(new TimeOnly(19, 30), TimeText.Read("18:00 - 19:30").End);
        Assert.True(TimeText.Read("+17:00").Signed);
    }
}
