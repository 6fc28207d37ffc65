using System.Globalization;
using NodaTime;
using NodaTime.Extensions;
using NodaTime.Text;
using Seasonwright.Core;
using Seasonwright.Core.Facts;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Documents.HandOut;
using Seasonwright.Documents.HandOut.Calendars;
using Seasonwright.Documents.Tests.HandOut;

namespace Seasonwright.Truth.Tests.HandOut;

/// <summary>
/// Calendars read back by two readers that are not ours: Ical.Net, which brings its own zones, and Debian's python3-icalendar,
/// which is made to reckon by the clocks the calendar describes (RFC 5545, 3.6.5). Expected instants are NodaTime's, read leniently.
/// </summary>
public sealed class CalendarTruth : IDisposable
{
    private static readonly LocalDateTimePattern Clock = LocalDateTimePattern.CreateWithInvariantCulture("yyyy-MM-dd HH:mm");

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("calendars");

    public void Dispose() => folder.Delete(recursive: true);

    /// <summary>
    /// Kick-offs in steps of 15 minutes for three hours around every clock change of two years in twelve zones, skipped and doubled times among
    /// them, and one on an ordinary day of each. Source of the changes: the IANA database in NodaTime.
    /// </summary>
    [Fact]
    public async Task Kick_offs_on_both_sides_of_every_clock_change_are_the_same_instants_to_both_readers()
    {
        string[] zones =
        [
            "Europe/Copenhagen", "Europe/London", "Europe/Dublin", "America/New_York", "America/Sao_Paulo", "Australia/Lord_Howe", "Pacific/Apia", "Africa/Casablanca",
            "Asia/Kathmandu", "Antarctica/Troll", "America/St_Johns", "Etc/UTC",
        ];
        var expected = new Dictionary<string, Instant>(StringComparer.Ordinal);
        var (skipped, doubled) = (0, 0);
        var files = new List<string>();
        foreach (var id in zones)
        {
            var zone = DateTimeZoneProviders.Tzdb[id];
            var (from, to) = (Instant.FromUtc(2027, 1, 15, 0, 0), Instant.FromUtc(2029, 1, 15, 0, 0));
            var locals = zone.GetZoneIntervals(from, to).Skip(1)
                .SelectMany(stretch => Enumerable.Range(-6, 13).Select(quarter => stretch.IsoLocalStart.PlusMinutes(15 * quarter)).Append(stretch.IsoLocalStart.PlusDays(-1)).Append(stretch.IsoLocalStart.PlusDays(1)))
                .Append(new LocalDateTime(2027, 10, 16, 18, 30)).Append(new LocalDateTime(2028, 2, 29, 0, 0)).Distinct();
            var facts = FactSet.Empty;
            foreach (var local in locals)
            {
                var name = $"{id} {Clock.Format(local)}";
                var count = zone.MapLocal(local).Count;
                if (count == 0) skipped++;
                if (count == 2) doubled++;
                expected.Add(name, zone.AtLeniently(local).ToInstant());
                var key = new MatchId($"m{expected.Count}");
                facts = facts.With(SeasonFacets.Match.Of(key), new Match(key, local.Date.ToDateOnly(), KickOff: local.TimeOfDay.ToTimeOnly(), Opponent: name, Zone: id == "Europe/Copenhagen" ? null : id));
            }
            files.Add(Write(id.Replace('/', '-'), new Season(new("season"), facts), "Europe/Copenhagen"));
        }
        Assert.True(skipped > 30 && doubled > 30, $"{skipped} skipped and {doubled} doubled");

        var theirs = await CalendarOracle.ReadAsync(files);
        Assert.Equal(expected.Count, theirs.Count);
        Assert.Multiple([.. theirs.Select(entry => (Action)(() =>
        {
            var name = ((string)entry["summary"]!)["Match v ".Length..];
            var instant = InstantPattern.ExtendedIso.Format(expected[name]);
            Assert.Equal($"{name}: {instant}", $"{name}: {entry["start"]!["utc"]}");
            Assert.Equal($"{name}: {InstantPattern.ExtendedIso.Format(expected[name] + Duration.FromHours(2))}", $"{name}: {entry["end"]!["utc"]}");
        }))]);

        var libraries = files.SelectMany(file => Ical.Net.Calendar.Load(File.ReadAllText(file))!.Events).ToList();
        Assert.Equal(expected.Count, libraries.Count);
        foreach (var entry in libraries)
        {
            var name = entry.Summary!["Match v ".Length..];
            Assert.Equal((name, expected[name].ToDateTimeUtc()), (name, entry.Start!.AsUtc));
            Assert.Equal((name, expected[name].ToDateTimeUtc().AddHours(2)), (name, entry.End!.AsUtc));
        }
    }

    /// <summary>A hundred hostile seasons: both readers find the same entries on the same days with the same texts.</summary>
    [Fact]
    public async Task Both_readers_find_the_same_entries_in_hostile_calendars()
    {
        var files = new List<string>();
        var entries = new Dictionary<(string File, string Uid), Ical.Net.CalendarComponents.CalendarEvent>();
        foreach (var (season, setup) in HostileSeasons.All)
        {
            var file = Path.Combine(folder.FullName, $"{season.Id}.ics");
            File.WriteAllText(file, SeasonCalendar.Write(season, setup, new Edition(null, new DateOnly(2027, 10, 18)), new CalendarChoices(Practices: true), CalendarRevisions.None));
            files.Add(file);
            foreach (var entry in Ical.Net.Calendar.Load(File.ReadAllText(file))!.Events) entries.Add((file, entry.Uid!), entry);
        }
        var theirs = await CalendarOracle.ReadAsync(files);
        Assert.Equal(entries.Count, theirs.Count);
        Assert.True(entries.Count > 5_000, $"{entries.Count} entries");
        foreach (var their in theirs)
        {
            var ours = entries[((string)their["file"]!, (string)their["uid"]!)];
            Assert.Equal(ours.Summary ?? "", (string)their["summary"]!);
            Assert.Equal(ours.Location ?? "", (string)their["location"]!);
            Assert.Equal(ours.Description ?? "", (string)their["description"]!);
            Assert.Equal(ours.Status, (string)their["status"]!);
            Assert.Equal(ours.Sequence, (int)their["sequence"]!);
            // The clocks of 1901 are seconds off from each other, and the second reader rounds them; a season cannot begin before 1950.
            if (ours.Start!.Year < 1950) continue;
            Assert.Equal(Told(ours.Start), Told(their["start"]!));
            if (ours.End is { } end && their["end"] is { } theirEnd) Assert.Equal(Told(end), Told(theirEnd));
        }

        static string Told(object moment) => moment switch
        {
            Ical.Net.DataTypes.CalDateTime { HasTime: false } day => day.Value.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            Ical.Net.DataTypes.CalDateTime { IsFloating: true } place => place.Value.ToString("yyyy-MM-ddTHH:mm:ss", CultureInfo.InvariantCulture),
            Ical.Net.DataTypes.CalDateTime time => time.AsUtc.ToString("yyyy-MM-ddTHH:mm:ssZ", CultureInfo.InvariantCulture),
            System.Text.Json.Nodes.JsonNode node => (string)(node["day"] ?? node["place"] ?? node["utc"])!,
            _ => "",
        };
    }

    private string Write(string name, Season season, string zone)
    {
        var setup = new Setup(new("team"), FactSet.Empty.With(SetupFacets.Locale.Of(default), new LocaleSettings(Zone: zone)));
        var file = Path.Combine(folder.FullName, $"{name}.ics");
        File.WriteAllText(file, SeasonCalendar.Write(season, setup, new Edition(null, new DateOnly(2027, 10, 18)), new CalendarChoices(), CalendarRevisions.None));
        return file;
    }
}
