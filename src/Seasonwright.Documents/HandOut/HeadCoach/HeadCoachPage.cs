using System.Globalization;
using System.Text;
using System.Xml.Linq;
using Seasonwright.Core;
using Seasonwright.Documents.Draw;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.HeadCoach;

/// <summary>
/// The head coach's sheet as one HTML file: style and fonts inside, no script, nothing fetched, so that it opens from an
/// e-mail with the laptop shut, on a phone as a list and in print as a table.
/// </summary>
internal static class HeadCoachPage
{
    public static string Of(HeadCoachSheet sheet)
    {
        var title = Say("head-coach.title", sheet.Name);
        var page = new XElement("html", new XAttribute("lang", "en"),
            new XElement("head",
                new XElement("meta", new XAttribute("charset", "utf-8")),
                new XElement("meta", new XAttribute("name", "viewport"), new XAttribute("content", "width=device-width, initial-scale=1")),
                new XElement("meta", new XAttribute("name", "color-scheme"), new XAttribute("content", "light dark")),
                // Whatever a name holds, a browser is told to fetch and run nothing.
                new XElement("meta", new XAttribute("http-equiv", "Content-Security-Policy"), new XAttribute("content", "default-src 'none'; style-src 'unsafe-inline'; font-src data:")),
                new XElement("title", title),
                new XElement("style", Style)),
            new XElement("body", new XElement("main", [Head(sheet), Wishes(sheet), Weeks(sheet), Foot()])));
        // Not the XML writer's own empty elements: HTML takes them as opened.
        var html = new StringBuilder("<!DOCTYPE html>\n");
        using (var writer = System.Xml.XmlWriter.Create(html, new() { OmitXmlDeclaration = true, NewLineChars = "\n" })) page.WriteTo(writer);
        return html.Append('\n').ToString();
    }

    private static XElement Head(HeadCoachSheet sheet) => new("header",
        new XElement("h1", sheet.Name),
        new XElement("p", new XAttribute("class", sheet.IsDraft ? "edition draft" : "edition"), sheet.Edition),
        new XElement("p", new XAttribute("class", "muted"), Say("head-coach.for", sheet.Span)),
        sheet.Goals.Count == 0 ? null : new XElement("ul", sheet.Goals.Select(goal => new XElement("li", Say("head-coach.goal", goal)))));

    private static XElement? Wishes(HeadCoachSheet sheet) => sheet.Wishes.Count == 0 ? null : new("section",
        new XElement("h2", Say("head-coach.wishes")),
        new XElement("table", new XAttribute("class", "wishes"),
            Columns("head-coach.col.week", "head-coach.col.days", "head-coach.col.feel", "head-coach.col.wish"),
            new XElement("tbody", sheet.Wishes.Select(wish => new XElement("tr", Row(wish.Week, wish.Days, wish.Feel),
                wish.Text is { } text ? new XElement("td", text) : new XElement("td", new XAttribute("class", "muted"), Say("head-coach.nothing-asked")))))));

    private static XElement Weeks(HeadCoachSheet sheet)
    {
        List<List<HeadCoachWeek>> phases = [];
        foreach (var week in sheet.Weeks)
        {
            if (week.Phase is not null || phases.Count == 0) phases.Add([]);
            phases[^1].Add(week);
        }
        return new("section",
            new XElement("h2", Say("head-coach.weeks-heading")),
            phases.Count == 0 ? new XElement("p", new XAttribute("class", "muted"), Say("head-coach.no-weeks")) : new XElement("table", new XAttribute("class", "weeks"),
                Columns("head-coach.col.week", "head-coach.col.days", "head-coach.col.feel", "head-coach.col.matches", "head-coach.col.away"),
                phases.Select(weeks => new XElement("tbody",
                    weeks[0].Phase is { } phase ? new XElement("tr", new XAttribute("class", "phase"), new XElement("th", new XAttribute("colspan", 5), new XAttribute("scope", "rowgroup"),
                        new XElement("span", new XAttribute("class", $"mark {phase.Kind}"), ""), $"{phase.Name}, {phase.Weeks} ", new XElement("span", new XAttribute("class", "muted"), phase.Means))) : null,
                    weeks.Select(week => new XElement("tr", Row(week.Number, week.Days, week.Feel), Lines(week.Matches), Lines([.. week.Away, .. week.Tests.Select(test => Say("head-coach.test", test))])))))));
    }

    private static XElement Foot() => new("footer", new XElement("p", Say("head-coach.legend")), new XElement("p", Say("paper.caution")));

    private static XElement Columns(params string[] names) =>
        new("thead", new XElement("tr", names.Select(name => new XElement("th", new XAttribute("scope", "col"), Say(name)))));

    private static object[] Row(int week, string days, WeekFeel? feel) =>
    [
        new XElement("th", new XAttribute("scope", "row"), week.ToString(CultureInfo.InvariantCulture)), new XElement("td", new XAttribute("class", "days"), days),
        new XElement("td", new XAttribute("class", "feel"), feel is { } known
            ? new object[] { new XElement("span", new XAttribute("class", $"feel-mark {known}"), new XAttribute("aria-hidden", "true"), new XElement("i", ""), new XElement("i", ""), new XElement("i", "")), " " + Say($"feel.{known}") }
            : ""),
    ];

    private static XElement Lines(ValueList<string> lines) => new("td", lines.Count == 0 ? "" : new XElement("ul", lines.Select(line => new XElement("li", line))));

    /// <summary>No child selectors: the XML writer would escape their sign, which a style sheet in HTML does not undo.</summary>
    private static string Style => Stylesheet.FontsInside + Palette.Css() + """
        *{box-sizing:border-box}
        body{margin:0;background:var(--paper);color:var(--ink);font:400 14px/1.45 Inter,sans-serif;font-variant-numeric:tabular-nums}
        main{max-width:1000px;margin:0 auto;padding:24px 20px 48px}
        header{position:relative}
        h1{font-size:26px;line-height:1.2;margin:0 0 4px}
        h2{font-size:17px;margin:28px 0 6px}
        ul{margin:0;padding:0;list-style:none}
        .edition{font-weight:600;margin:0}
        .draft{display:inline-block;border:1px dashed var(--event-edge);border-radius:4px;padding:1px 10px}
        .muted{color:var(--muted);font-weight:400}
        table{border-collapse:collapse;width:100%}
        th,td{text-align:left;vertical-align:top;padding:5px 10px 5px 0;border-top:1px solid var(--hairline)}
        thead th{font-size:13px;font-weight:400;color:var(--muted);border-top:0}
        tbody th{font-weight:600;width:40px}
        .days{white-space:nowrap;width:130px}
        .feel{white-space:nowrap;width:130px}
        .phase th{padding-top:18px;font-weight:600;border-top:0;width:auto}
        .mark{display:inline-block;width:5px;height:16px;margin-right:8px;vertical-align:-3px;background:var(--transition-edge)}
        .mark.GeneralPreparation{background:var(--general-edge)}
        .mark.SpecificPreparation,.mark.PreCompetition{background:var(--specific)}
        .mark.Competition{background:var(--competition)}
        .mark.Peak{background:var(--peak)}
        .feel-mark{display:inline-flex;align-items:flex-end;gap:2px;width:18px;height:11px}
        .feel-mark i{width:4px;border:1px solid var(--load-done)}
        .feel-mark i:nth-child(1){height:4px}.feel-mark i:nth-child(2){height:7px}.feel-mark i:nth-child(3){height:10px}
        .feel-mark.Easy i:nth-child(-n+1),.feel-mark.Normal i:nth-child(-n+2),.feel-mark.Hard i{background:var(--load-done)}
        .feel-mark.MatchOnly i{display:none}
        .feel-mark.MatchOnly::before{content:'';width:10px;height:10px;border:1.5px solid var(--ink);border-radius:50%}
        footer{margin-top:28px;color:var(--muted);font-size:13px}
        @media (max-width:700px){
        main{padding:16px 14px 40px}
        thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
        table,tbody,tr{display:block}
        tr{border-top:1px solid var(--hairline);padding:6px 0}
        th,td{border:0;padding:0}
        tbody th,td.days,td.feel{display:inline-block;width:auto;padding-right:12px}
        td{display:block}
        td:empty{display:none}
        .phase th{display:block;padding-top:12px}
        }
        @media print{
        body{font-size:9.5pt;background:none}
        main{padding:0;max-width:none}
        tr{break-inside:avoid}
        .phase{break-after:avoid}
        .feel-mark i,.mark{print-color-adjust:exact;-webkit-print-color-adjust:exact}
        }
        """;
}
