using System.Globalization;
using System.Text.RegularExpressions;
using Seasonwright.Core;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Desk.Lists;
using Seasonwright.Desk.Streams;

namespace Seasonwright.Desk.Squad;

/// <summary>Taking the kept squad list (<see cref="KeptSquads"/>) as the roster.</summary>
public static partial class TakingSquadList
{
    /// <summary>Who stands on the kept list and is not in the roster: same names, whatever the capitals, are the same person.</summary>
    public static IEnumerable<KeptPlayer> NotIn(this IEnumerable<KeptPlayer> kept, IReadOnlyList<Player> roster) =>
        kept.Where(player => !roster.Any(known => IsSame(known.Athlete.Family, player.Family) && IsSame(known.Athlete.Given, player.Given)));

    /// <summary>Adds everybody on the kept list who is not in the roster yet. Those who are stay as they are; the list stays kept. Lifts it names become sets tested today, but for those that are too near a maximum for who is young.</summary>
    /// <param name="gesture">Names the players, so that what is sent twice adds nobody twice.</param>
    /// <param name="from">Their first day with the team.</param>
    /// <returns><see cref="Kept"/> with the number of players added.</returns>
    public static async Task<Answer> TakeSquadListAsync(this Workspace workspace, Setup setup, Guid gesture, DateOnly from)
    {
        var team = setup.Id;
        var ids = new NaturalIds(new SeasonId(gesture.ToString("N")));
        var coming = new List<(Athlete Athlete, IReadOnlyList<Membership> Memberships)>();
        var weighings = new List<WeighIn>();
        var lifts = new List<LiftTest>();
        var answer = await Recording.KeepAsync(async () =>
        {
            var now = workspace.Clock.GetUtcNow();
            foreach (var (player, place) in (await workspace.SquadAsync(team)).NotIn(await workspace.RosterAsync(team)).Select((player, place) => (player, place)))
            {
                var key = place.ToString(CultureInfo.InvariantCulture);
                var id = new PersonId(ids.Of("athlete", key));
                var athlete = new Athlete(id, player.Family, player.Given, player.Number, (player.Position ?? "").Split('/', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).ToValueList(), player.Born, null);
                coming.Add((athlete, [new Membership(id, team, from, null, LeadingDays.None)]));
                var mass = MassOf(player.Mass);
                if (mass is not null) weighings.Add(new(Guid.ParseExact(ids.Of("mass", key), "N"), id, workspace.Today, mass, now));
                // A list may write an age and no birthday.
                var isYoung = player.Age < YoungLifts.Age(setup) || YoungLifts.IsYoung(athlete, workspace.Today, setup);
                lifts.AddRange(ListedLifts.Of(player.Lifts, id, mass?.Kilograms, workspace.Today, setup, lift => Guid.ParseExact(ids.Of("lift", key, lift.ToString()), "N"), now)
                    .Where(test => !isYoung || !YoungLifts.IsTooNear(test.Repetitions)));
            }
            if (!await workspace.Folder.Athletes.PutAsync(StreamIds.Of(team), coming)) return false;
            foreach (var weighing in weighings) await workspace.Folder.Athletes.AppendAsync(weighing);
            foreach (var lift in lifts) await workspace.Folder.Athletes.AppendAsync(lift);
            return true;
        }, "team");
        return answer is Kept ? new Kept(coming.Count) : answer;
    }

    /// <summary>A kept mass ("71.5 kg", "141 lb", "15 st 2 lb"); null for none, and for one that no body has.</summary>
    internal static BodyMass? MassOf(string? text)
    {
        if (Mass().Match(text ?? "") is not { Success: true } read) return null;
        var (amount, over) = (Number(read.Groups["amount"].Value), read.Groups["over"] is { Success: true } pounds ? Number(pounds.Value) : 0);
        var unit = read.Groups["unit"].Value switch { "kg" => BodyMassUnit.Kilogram, "lb" => BodyMassUnit.Pound, _ => BodyMassUnit.Stone };
        try
        {
            return new BodyMass(amount, unit, over);
        }
        catch (ArgumentOutOfRangeException)
        {
            return null;
        }
    }

    private static decimal Number(string text) => decimal.Parse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    private static bool IsSame(string one, string other) => string.Equals(one.Trim(), other.Trim(), StringComparison.OrdinalIgnoreCase);

    [GeneratedRegex(@"^(?<amount>[0-9]{1,4}(\.[0-9]{1,3})?) (?<unit>kg|lb|st)( (?<over>[0-9]{1,2}(\.[0-9]{1,3})?) lb)?$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Mass();
}
