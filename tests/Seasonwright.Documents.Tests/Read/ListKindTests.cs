using System.Text;
using Seasonwright.Core.Calendar;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Events;
using Seasonwright.Documents.Read.Fixtures;
using Seasonwright.Documents.Read.Sheets;
using Seasonwright.Documents.Read.Squads;
using Seasonwright.Documents.Read.Workbooks;
using Seasonwright.Documents.Tests.Read.Sheets;

namespace Seasonwright.Documents.Tests.Read;

/// <summary>A list brought to the wrong page is refused whole and told where it belongs; one that may belong there is read. Lists are invented, what is expected is what a careful human says.</summary>
public class ListKindTests
{
    private const string Squad = "Nr;Name;Pos;geb.;Gewicht\n1;Ysolde Varnum;TW;14.3.1999;71,5\n4;Maren Thistlewick;RL;30.7.1998;68\n7;Tamsin Garrick;LA;5.5.2000;66\n";

    private const string SquadLines = "Harbour Vale - squad\n1. Ysolde Varnum (goalkeeper) - 71 kg\n4. Maren Thistlewick, left back, squat 100\n7. Tamsin Garrick, left wing, 66 kg\n";

    private const string Matches = "Date;Opponent;H/A\n5.9.2026;Kalnes HK;H\n12.9.2026;Brovik;A\n19.9.2026;Skarholm IF;H\n";

    private const string MatchLines = "Round 1 - Saturday 5 September 2026\nHarbour Vale v Kalnes HK\nBrovik v Skarholm IF\nRound 2 - Saturday 12 September 2026\nKalnes HK v Brovik\nSkarholm IF v Harbour Vale\n";

    private const string Breaks = "What;When;Who\nAutumn holidays;12 - 18 Oct 2026;all\nTraining camp;21 - 23 Aug 2026;squad\nExams;23 Nov - 4 Dec 2026;students\nHall closed;1 - 5 March 2027;all\n";

    private const string Notice = "TERM DATES\n* Autumn half-term: Mon 26 Oct - Fri 30 Oct 2026\n* Mock exams: 23 Nov to 4 Dec 2026\n* Christmas holidays 19 Dec 2026 - 4 Jan 2027\n* Sports hall shut 3 March 2027\n";

    private const string WeeksAcross = "Harbour Vale;;;;;;;;;;\nWeek;31.8.2026;7.9.2026;14.9.2026;21.9.2026;28.9.2026;5.10.2026;12.10.2026;19.10.2026;26.10.2026;2.11.2026\nMatch;Kalnes (H);Brovik (A);;;Skarholm (H);;;;;\nLoad;60;70;80;50;60;70;80;50;60;70\n";

    private const string WeeksDown = "Week of;Phase;Block;Load;Match\n31.8.2026;Preparation;Base;60;\n7.9.2026;;;70;Kalnes (H)\n14.9.2026;;Build;80;\n21.9.2026;Season;;50;Brovik (A)\n28.9.2026;;;60;\n5.10.2026;;;70;\n";

    private const string Calendar = "BEGIN:VCALENDAR\nVERSION:2.0\nPRODID:-//Vale//EN\nBEGIN:VEVENT\nUID:a\nDTSTAMP:20260801T000000Z\nDTSTART;VALUE=DATE:20260905\nSUMMARY:Harbour Vale - Brovik\nEND:VEVENT\nEND:VCALENDAR\n";

    [Theory]
    [InlineData(Squad, "fixtures events sheet", "squad-here")]
    [InlineData(SquadLines, "fixtures events sheet", "squad-here")]
    [InlineData(Matches, "events squad sheet", "fixtures-here")]
    [InlineData(MatchLines, "events squad sheet", "fixtures-here")]
    [InlineData(Breaks, "fixtures squad sheet", "events-here")]
    [InlineData(Notice, "fixtures squad sheet", "events-here")]
    [InlineData(WeeksAcross, "fixtures events squad", "year-here")]
    [InlineData(WeeksDown, "fixtures events squad", "year-here")]
    [InlineData(Calendar, "squad sheet", "calendar-here")]
    public void Another_kind_is_refused_whole_and_told_where_it_belongs(string text, string readers, string problem)
    {
        foreach (var reader in readers.Split(' ')) Assert.Equal($"{reader}: {problem}, 0 rows", $"{reader}: {Said(reader, text)}");
    }

    [Theory]
    [InlineData("squad-01-two-name-columns.csv", "squad-here")]
    [InlineData("squad-02-one-name-column.xlsx", "squad-here")]
    [InlineData("squad-03-pasted-list.txt", "squad-here")]
    [InlineData("workbook-01-weeks-across.xlsx", "year-here")]
    [InlineData("workbook-02-weeks-down.xlsx", "year-here")]
    [InlineData("workbook-03-several-sheets.xlsx", "year-here")]
    [InlineData("workbook-04-colours-only.xlsx", "year-here")]
    [InlineData("workbook-05-days-down.xlsx", "year-here")]
    public void The_samples_too(string name, string problem)
    {
        var bytes = File.ReadAllBytes(SheetSampleTests.PathOf("samples/" + name));
        foreach (var reader in new[] { "fixtures", "events", problem == "squad-here" ? "sheet" : "squad" }) Assert.Equal($"{reader}: {problem}, 0 rows", $"{reader}: {Said(reader, name, bytes)}");
    }

    // Each is read where it was brought, with as many rows as it has.
    [Theory]
    [InlineData("fixtures", 3, "Date;Opponent;H/A;Birthday\n5.9.2026;Kalnes HK;H;3.4.1999\n12.9.2026;Brovik;A;\n19.9.2026;Skarholm IF;H;1.2.2001\n")]
    [InlineData("fixtures", 4, "Date;Phase;Opponent;H/A;Type\n5.9.2026;Autumn;Kalnes HK;H;Block\n12.9.2026;Autumn;Brovik;A;Block\n19.9.2026;Autumn;Skarholm IF;H;Block\n26.9.2026;Autumn;Ostermeer;A;Block\n")]
    [InlineData("fixtures", 3, "Date;Opponent;H/A;Note\n5.9.2026;Kalnes HK;H;camp before\n12.9.2026;Brovik;A;exams\n19.9.2026;Skarholm IF;H;hall closed until noon\n")]
    [InlineData("fixtures", 3, "Player of the match;Date;Opponent;H/A;No\nMaren Thistlewick;5.9.2026;Kalnes HK;H;4\nYsolde Varnum;12.9.2026;Brovik;A;1\nTamsin Garrick;19.9.2026;Skarholm IF;H;7\n")]
    [InlineData("events", 3, "Event;From;To;Teacher\nAutumn holidays;12.10.2026;18.10.2026;Maren Thistlewick\nExams;23.11.2026;4.12.2026;Ysolde Varnum\nSchool concert;17.12.2026;17.12.2026;Tamsin Garrick\n")]
    [InlineData("events", 3, "No;Name;From;To\n1;Harvest fair;12.10.2026;18.10.2026\n2;Open house;23.11.2026;24.11.2026\n3;Concert;17.12.2026;17.12.2026\n")]
    [InlineData("events", 4, "What;When\nFriendly v Kalnes HK;5 Sep 2026\nAutumn holidays;12 - 18 Oct 2026\nExams;23 Nov - 4 Dec 2026\nCup trip Brovik;5 Feb 2027\n")]
    [InlineData("events", 3, "Journey Harbour Vale - Skagrund 5 Sep 2026\nJourney Harbour Vale - Brovik 12 Sep 2026\nJourney Harbour Vale - Kalnes 19 Sep 2026\n")]
    [InlineData("squad", 3, "No;Name;Position;Next match\n1;Ysolde Varnum;goalkeeper;5.9.2026\n4;Maren Thistlewick;left back;12.9.2026\n7;Tamsin Garrick;left wing;5.9.2026\n")]
    [InlineData("squad", 3, "No;Name;Position;5.9.2026;12.9.2026;19.9.2026;26.9.2026;3.10.2026;10.10.2026;17.10.2026;24.10.2026;31.10.2026\n1;Ysolde Varnum;goalkeeper;x;x;x;x;x;x;x;x;x\n4;Maren Thistlewick;left back;x;;x;x;x;x;;x;x\n7;Tamsin Garrick;left wing;;x;x;x;x;x;x;x;x\n")]
    [InlineData("squad", 3, "Ysolde Varnum\nMaren Thistlewick\nTamsin Garrick\n")]
    [InlineData("squad", 3, "1 Ysolde Varnum 14.3.1999\n4 Maren Thistlewick 30.7.1998\n7 Tamsin Garrick 5.5.2000\n")]
    public void A_list_that_may_belong_there_is_read(string reader, int rows, string text) => Assert.Equal($", {rows} rows", Said(reader, text));

    private static string Said(string reader, string text) => Said(reader, "list.txt", Encoding.UTF8.GetBytes(text));

    private static string Said(string reader, string name, byte[] bytes)
    {
        var source = SourceText.OfBytes(name, bytes);
        switch (reader)
        {
            case "fixtures":
                var fixtures = FixtureReader.Read(source, new FixtureOptions());
                return Told(fixtures.Problems, fixtures.Rows.Count);
            case "events":
                var events = EventReader.Read(source, new EventReading(Season: new DaySpan(new(2026, 6, 28), new(2027, 6, 27))));
                return Told(events.Problems, events.Rows.Count + events.TestDays.Count);
            case "squad":
                var squad = SquadReader.Read(name, bytes, new SquadOptions(new(2026, 8, 1)));
                return Told(squad.Problems, squad.Rows.Count);
            default:
                var sheet = SheetReader.OrElsewhere(SheetReader.Read(Workbook.Read(name, bytes), SheetMap.Empty), bytes);
                return Told(sheet.Problems, sheet.Rows.Count);
        }
    }

    private static string Told(IEnumerable<Problem> problems, int rows) => $"{string.Join(' ', problems.Select(problem => problem.Id))}, {rows} rows";
}
