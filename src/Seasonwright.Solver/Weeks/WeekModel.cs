using Google.OrTools.Sat;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;

namespace Seasonwright.Solver;

/// <summary>A week as an integer programme: which kinds on which days, how long, what each carries. What falls short is paid for, so there is always a solution.</summary>
internal sealed class WeekModel
{
    /// <summary>What a practice may be asked to hold, with the kind of session whose days it follows.</summary>
    private static readonly (QualityKind Quality, SessionKind Like)[] Askable =
        [(QualityKind.Speed, SessionKind.Speed), (QualityKind.ChangeOfDirection, SessionKind.Power), (QualityKind.HighIntensityConditioning, SessionKind.Intervals)];

    /// <summary>Shorter practices are asked for nothing.</summary>
    private const int LongEnoughToAsk = 30;

    private sealed record Place(WeekDay Day, SessionRange Range, int Step, int AStep, BoolVar Is, IntVar Steps, IReadOnlyList<(QualityKind Quality, BoolVar Is)> Carried, WeekSession Usual);

    private readonly WeekProblem problem;
    private readonly List<Place> places = [];
    private readonly List<(WeekSession Practice, QualityKind Quality, BoolVar Is)> asked = [];
    private readonly Dictionary<int, BoolVar> works = [], hard = [];
    private readonly LinearExprBuilder cost = LinearExpr.NewBuilder();

    public WeekModel(WeekProblem problem)
    {
        this.problem = problem;
        foreach (var day in problem.Days)
            foreach (var kind in problem.Kinds) Add(day, kind);
        foreach (var session in problem.Given.Where(session => !session.IsOurs && session.Minutes >= LongEnoughToAsk)) Ask(session);
        Apart();
        foreach (var day in problem.Days)
        {
            Day(day);
            Once(day);
        }
        foreach (var (_, of, most) in WeekConditions.OfWeek)
            if (most(problem) is { } limit) Within(places, of, limit - problem.Fixed.Where(IsInside).Sum(of));
        foreach (var (_, kind, most) in WeekConditions.OfWork)
            if (most(problem) is { } limit) Model.Add(LinearExpr.Sum([.. places.Where(place => place.Range.Kind == kind).Select(place => place.Is), .. asked.Where(one => LikeOf(one.Quality) == kind).Select(one => one.Is)]) <= Math.Max(0, limit - problem.Fixed.Count(session => IsInside(session) && session.Kind == kind)));
        Days();
        Hard();
        Target();
        Exposures();
        Spread();
        Model.Minimize(cost);
    }

    public CpModel Model { get; } = new();

    public List<WeekSession> Sessions(CpSolver solver) => [.. places.Where(place => solver.BooleanValue(place.Is)).Select(place => place.Usual with
    {
        Minutes = (int)solver.Value(place.Steps) * place.Step,
        Qualities = [.. SessionRange.Own(place.Range.Kind), .. place.Carried.Where(one => solver.BooleanValue(one.Is)).Select(one => one.Quality)],
    })];

    public List<AskedOfPractice> Asked(CpSolver solver) => [.. asked.Where(one => solver.BooleanValue(one.Is)).Select(one => new AskedOfPractice(one.Practice.Day, one.Quality)).Distinct()];

    private bool IsInside(WeekSession session) => session.Day >= 0 && session.Day < problem.Days.Count;

    private static LinearExpr Load(Place place) => LinearExpr.Term(place.Steps, place.AStep);

    private void Add(WeekDay day, SessionKind kind)
    {
        if (WeekConditions.Against(problem, day, kind).Any()) return;
        var range = SessionRange.Of(kind);
        var stands = problem.Standing.FirstOrDefault(session => session.Day == day.Index && session.Kind == kind);
        var longest = Math.Min(range.Most, range.Work.MinutesOn(problem, day));
        var (least, most, top) = ((range.Least + problem.Step - 1) / problem.Step, longest / problem.Step, range.Most / problem.Step);
        if (least > most) return;
        // What stands keeps its own effort; of half an effort a step counts as the next whole AU.
        var rpe = stands is null || stands.Rpe > range.RpeOn(problem, day) && (day.ToNext == 1 || day.SinceLast <= problem.Limits.HardAfter || day.Travel != WeekTravel.None) ? range.RpeOn(problem, day) : stands.Rpe;
        var usual = new WeekSession(day.Index, DaySlot.Afternoon, kind, range.Usual, rpe, [.. SessionRange.Own(kind)]);
        if (problem.Fixed.Any(other => WeekConditions.Against(problem, usual, other).Any())) return;
        if (stands is not null) top = Math.Max(top, stands.Minutes / problem.Step);
        var name = $"{kind}{day.Index}";
        var (isThere, steps) = (Model.NewBoolVar(name), Model.NewIntVar(0, top, $"{name}steps"));
        var carried = range.Carries.Where(quality => problem.Asked[(int)quality] > 0 && range.CanCarry(problem, quality)).Select(quality => (quality, Is: Model.NewBoolVar($"{name}{quality}"))).ToList();
        var minutes = LinearExpr.WeightedSum(carried.Select(one => one.Is), carried.Select(one => SessionRange.MinutesToCarry(one.quality)));
        Model.Add(steps <= top * isThere);
        // What is carried takes its minutes beside the session's own work.
        List<Constraint> ranges =
        [
            Model.Add(problem.Step * steps >= problem.Step * least * isThere + minutes),
            Model.Add(problem.Step * steps <= problem.Step * most * isThere + minutes),
            Model.Add(LinearExpr.Sum(carried.Select(one => one.Is)) <= range.MostCarried * isThere),
        ];
        foreach (var (_, isCarried) in carried) Model.AddImplication(isCarried, isThere);
        places.Add(new Place(day, range, problem.Step, (int)Math.Ceiling(problem.Step * rpe), isThere, steps, carried, usual));
        cost.AddTerm(isThere, WeekPrices.Session + (IsIdle(kind) ? WeekPrices.Idle : 0) + (day.SinceLast == problem.Limits.HeavyAfter && (usual.IsHeavy || kind == SessionKind.Speed) ? WeekPrices.HeavyAfter : 0)
            + (day.SinceLast <= problem.Limits.HardAfter && kind != SessionKind.Recovery ? WeekPrices.DayAfter : 0));
        OffUsual(steps, isThere, range.Usual, WeekPrices.OffUsualMinute);
        if (stands is not null) Keep(stands, places[^1], ranges);
    }

    private bool IsIdle(SessionKind kind) => !SessionRange.Own(kind).Any(quality => problem.Asked[(int)quality] > 0);

    /// <summary>Pays for minutes from a length where a session is there.</summary>
    private void OffUsual(IntVar steps, BoolVar isThere, int usual, int price)
    {
        var off = Model.NewIntVar(0, usual + 240, "off");
        Model.Add(off >= problem.Step * steps - usual * isThere);
        Model.Add(off >= usual * isThere - problem.Step * steps);
        cost.AddTerm(off, price);
    }

    /// <summary>What stands costs to be dropped, and may stay as it is whatever a proposed one would be.</summary>
    private void Keep(WeekSession stands, Place place, List<Constraint> ranges)
    {
        if (stands.Minutes % problem.Step == 0 && stands.Qualities.Except(place.Carried.Select(one => one.Quality)).ToHashSet().SetEquals(SessionRange.Own(place.Range.Kind)))
        {
            var isAsItIs = Model.NewBoolVar("asItIs");
            Model.AddImplication(isAsItIs, place.Is);
            Model.Add(problem.Step * place.Steps == stands.Minutes).OnlyEnforceIf(isAsItIs);
            foreach (var (quality, isCarried) in place.Carried) Model.AddImplication(isAsItIs, stands.Qualities.Contains(quality) ? isCarried : isCarried.Not());
            foreach (var range in ranges) range.OnlyEnforceIf(isAsItIs.Not());
        }
        cost.Add(WeekPrices.Standing);
        cost.AddTerm(place.Is, -WeekPrices.Standing);
        OffUsual(place.Steps, place.Is, stands.Minutes, WeekPrices.StandingMinute);
        foreach (var (quality, isCarried) in place.Carried) cost.AddTerm(isCarried, stands.Qualities.Contains(quality) ? -WeekPrices.StandingQuality : WeekPrices.StandingQuality);
    }

    private void Ask(WeekSession practice)
    {
        if (!IsInside(practice) || practice.Qualities.Count > 0 || problem.Days[practice.Day].IsPast) return;
        var mine = Askable.Where(one => problem.Asked[(int)one.Quality] > 0 && !WeekConditions.Against(problem, problem.Days[practice.Day], one.Like).Any())
            .Select(one => (practice, one.Quality, Model.NewBoolVar($"ask{practice.Day}{practice.Slot}{one.Quality}"))).ToList();
        Model.AddAtMostOne(mine.Select(one => one.Item3));
        asked.AddRange(mine);
        foreach (var (_, _, isAsked) in mine) cost.AddTerm(isAsked, WeekPrices.AskOfPractice);
    }

    private void Apart()
    {
        foreach (var (one, like) in Literals(places))
        {
            if (problem.Fixed.Any(other => WeekConditions.Against(problem, like, other).Any())) Model.Add(one == 0);
        }
        for (var at = 0; at < places.Count; at++)
            foreach (var (one, like) in Literals([places[at]]))
                foreach (var (other, next) in Literals(places[(at + 1)..]))
                    if (WeekConditions.Against(problem, like, next).Any()) Model.AddAtMostOne([one, other]);
        // What practice is asked to hold keeps the distances of a session of its own.
        foreach (var (practice, quality, isAsked) in asked)
        {
            var like = AsSession(practice, quality);
            if (problem.Fixed.Any(other => other != practice && IsTooNear(like, other))) Model.Add(isAsked == 0);
            foreach (var place in places.Where(place => IsTooNear(like, place.Usual))) Model.AddAtMostOne([place.Is, isAsked]);
            foreach (var other in asked.Where(other => other.Practice.Day > practice.Day && IsTooNear(like, AsSession(other.Practice, other.Quality)))) Model.AddAtMostOne([other.Is, isAsked]);
        }
    }

    /// <summary>A place as it is, and with each quality that it may carry.</summary>
    private static IEnumerable<(BoolVar Is, WeekSession Like)> Literals(List<Place> some) => some.SelectMany(place => place.Carried
        .Select(one => (one.Is, place.Usual with { Qualities = [.. place.Usual.Qualities, one.Quality] })).Prepend((place.Is, place.Usual)));

    /// <summary>The kind of session whose conditions a quality keeps that practice is asked to hold.</summary>
    public static SessionKind LikeOf(QualityKind quality) => Askable.First(one => one.Quality == quality).Like;

    private static WeekSession AsSession(WeekSession practice, QualityKind quality) => new(practice.Day, practice.Slot, LikeOf(quality), practice.Minutes, SessionRange.Of(LikeOf(quality)).Rpe, [quality]);

    /// <summary>Other days keep their distance; on its own day practice follows what is ours, so that it asks for no sprints of heavy legs, and nothing of anybody tested.</summary>
    private bool IsTooNear(WeekSession one, WeekSession other) => one.Day != other.Day ? WeekConditions.Against(problem, one, other).Any() : other.Kind == SessionKind.Test || one.Kind == SessionKind.Speed && other.IsHeavy;

    private void Day(WeekDay day)
    {
        var here = places.Where(place => place.Day == day).ToList();
        foreach (var (_, of, most) in WeekConditions.OfDay)
            if (most(problem, day) is { } limit) Within(here, of, limit - problem.FixedOn(day.Index).Sum(of));
        if (here.Count == 0 || problem.FixedOn(day.Index).Any()) return;
        works[day.Index] = Model.NewBoolVar($"works{day.Index}");
        foreach (var place in here) Model.AddImplication(place.Is, works[day.Index]);
        if (IsWeekend(day) && !problem.Days.Any(one => one.IsMatch && IsWeekend(one))) cost.AddTerm(works[day.Index], WeekPrices.Weekend);
    }

    private static bool IsWeekend(WeekDay day) => day.Date.DayOfWeek is DayOfWeek.Saturday or DayOfWeek.Sunday;

    /// <summary>A measure of sessions is their count, or grows with their minutes by what it is for one minute.</summary>
    private void Within(List<Place> some, Func<WeekSession, int> of, int left)
    {
        if (some.Count == 0) return;
        var sum = LinearExpr.NewBuilder();
        foreach (var place in some)
        {
            var (ten, twenty) = (of(place.Usual with { Minutes = 10 }), of(place.Usual with { Minutes = 20 }));
            if (ten == twenty) sum.AddTerm(place.Is, ten);
            else sum.AddTerm(place.Steps, (place.Step * (twenty - ten) + 9) / 10);
        }
        Model.Add(sum <= Math.Max(0, left));
    }

    /// <summary>Days on which nothing is, as far as what is given leaves any: one in seven, and no more days of training than there is time for.</summary>
    private void Days()
    {
        var open = works.Select(day => (day.Key, Is: day.Value)).ToList();
        var free = problem.Days.Where(day => !day.IsMatch && !problem.FixedOn(day.Index).Any() && !works.ContainsKey(day.Index)).Select(day => day.Index).ToList();
        foreach (var (first, last) in problem.RestWithin) Rest(first, last);
        var given = problem.Days.Count(day => problem.FixedOn(day.Index).Any());
        if (problem.MostDays is { } most) Model.Add(LinearExpr.Sum(open.Select(day => day.Is)) <= Math.Max(0, most - given));
        if (problem.Days.Count == 7 && open.Count + free.Count >= 2)
        {
            var missing = Model.NewBoolVar("oneDayOff");
            Model.Add(LinearExpr.Sum(open.Select(day => day.Is)) <= open.Count + free.Count - 2 + missing);
            cost.AddTerm(missing, WeekPrices.OneDayOff);
        }

        void Rest(int from, int by)
        {
            var until = open.Where(day => day.Key >= from && day.Key <= by && problem.Days[day.Key].CanBeFree).Select(day => day.Is).ToList();
            if (until.Count > 0 && !free.Exists(day => day >= from && day <= by && problem.Days[day].CanBeFree)) Model.Add(LinearExpr.Sum(until) <= until.Count - 1);
        }
    }

    private void Hard()
    {
        foreach (var day in problem.Days.Where(day => !problem.IsHardAnyway(day.Index)))
        {
            var here = places.Where(place => place.Day == day && place.Usual.IsHard).ToList();
            if (here.Count == 0) continue;
            hard[day.Index] = Model.NewBoolVar($"hard{day.Index}");
            foreach (var place in here) Model.AddImplication(place.Is, hard[day.Index]);
        }
        var run = problem.Limits.HardRun;
        for (var first = 1 - run; first < problem.Days.Count; first++)
        {
            var days = Enumerable.Range(first, run).ToList();
            var (given, open) = (days.Count(problem.IsHardAnyway), days.Where(hard.ContainsKey).Select(day => hard[day]).ToList());
            if (given + open.Count >= run && open.Count > 0) Model.Add(LinearExpr.Sum(open) <= run - 1 - given);
        }
        for (var day = -1; day < problem.Days.Count; day++) HardPair(day, day + 1);
    }

    private void HardPair(int one, int next)
    {
        BoolVar?[] both = [hard.GetValueOrDefault(one), hard.GetValueOrDefault(next)];
        var given = (problem.IsHardAnyway(one) ? 1 : 0) + (problem.IsHardAnyway(next) ? 1 : 0);
        var open = both.OfType<BoolVar>().ToList();
        if (open.Count == 0 || given + open.Count < 2) return;
        var pair = Model.NewBoolVar("hardPair");
        Model.Add(pair >= LinearExpr.Sum(open) + given - 1);
        cost.AddTerm(pair, WeekPrices.HardPair);
    }

    private void Target()
    {
        if (problem.Ours is not { } ours) return;
        Off(LinearExpr.Sum(places.Select(Load)) + problem.Fixed.Where(session => session.IsOurs && IsInside(session)).Sum(session => session.Au), ours, WeekPrices.PointOffTarget);
        var shape = WeekShape.Of(problem);
        var (whole, all) = ((long)ours + problem.Fixed.Where(session => !session.IsOurs && IsInside(session)).Sum(session => session.Au), shape.Sum());
        if (all == 0) return;
        foreach (var day in problem.Days.Where(day => shape[day.Index] > 0))
            Off(LinearExpr.Sum(places.Where(place => place.Day == day).Select(Load)) + problem.FixedOn(day.Index).Sum(session => session.Au), whole * shape[day.Index] / all, WeekPrices.PointOffShape);
    }

    /// <summary>Pays for each point that a load lies beside another.</summary>
    private void Off(LinearExpr load, long aim, int price)
    {
        var off = Model.NewIntVar(0, 60_000, "off");
        Model.Add(off >= load - aim);
        Model.Add(off >= aim - load);
        cost.AddTerm(off, WeekPrices.AnAu(price, problem.Hundred));
    }

    private void Exposures()
    {
        for (var quality = QualityKind.Hypertrophy; quality <= QualityKind.Prevention; quality++)
        {
            var sum = LinearExpr.NewBuilder();
            foreach (var place in places)
            {
                if (SessionRange.Own(place.Range.Kind).Contains(quality)) sum.AddTerm(place.Is, 1);
                foreach (var (carried, isCarried) in place.Carried)
                    if (carried == quality) sum.AddTerm(isCarried, 1);
            }
            foreach (var (_, other, isAsked) in asked)
                if (other == quality) sum.AddTerm(isAsked, 1);
            var aim = problem.Asked[(int)quality] - problem.Fixed.Count(session => IsInside(session) && session.Qualities.Contains(quality));
            var (missing, over) = (Model.NewIntVar(0, 3, $"missing{quality}"), Model.NewIntVar(0, 30, $"over{quality}"));
            Model.Add(sum + missing >= aim);
            Model.Add(over >= sum - Math.Max(0, aim));
            cost.AddTerm(missing, WeekPrices.Missing(problem, quality));
            cost.AddTerm(over, WeekPrices.SuperfluousExposure);
        }
        if (problem.AsksForSprints)
        {
            var none = Model.NewBoolVar("noSprints");
            Model.Add(LinearExpr.Sum(places.Where(place => place.Range.Kind == SessionKind.Speed && !(place.Day.Index > problem.SprintBy)).Select(place => place.Is)) + none >= 1);
            cost.AddTerm(none, WeekPrices.NoSprints);
        }
        var legs = problem.AskedForLegs - problem.Fixed.Count(session => IsInside(session) && WeekConditions.IsForLegs(session));
        if (legs <= 0) return;
        var without = Model.NewIntVar(0, legs, "noLegs");
        Model.Add(LinearExpr.Sum(places.Where(place => WeekConditions.IsForLegs(place.Usual)).Select(place => place.Is)) + without >= legs);
        cost.AddTerm(without, WeekPrices.NoLegs);
        if (!problem.AsksForFullLegs || problem.Fixed.Any(session => IsInside(session) && session.IsHeavy)) return;
        var small = Model.NewBoolVar("smallDoseOnly");
        Model.Add(LinearExpr.Sum(places.Where(place => place.Usual.IsHeavy).Select(place => place.Is)) + small >= 1);
        cost.AddTerm(small, WeekPrices.SmallDoseOnly);
    }

    /// <summary>One exposure of a quality a day.</summary>
    private void Once(WeekDay day)
    {
        for (var quality = QualityKind.Hypertrophy; quality <= QualityKind.Prevention; quality++)
        {
            List<BoolVar> here =
            [
                .. places.Where(place => place.Day == day && SessionRange.Own(place.Range.Kind).Contains(quality)).Select(place => place.Is),
                .. places.Where(place => place.Day == day).SelectMany(place => place.Carried).Where(one => one.Quality == quality).Select(one => one.Is),
                .. asked.Where(one => one.Practice.Day == day.Index && one.Quality == quality).Select(one => one.Is),
            ];
            if (here.Count > 1) Model.AddAtMostOne(here);
        }
    }

    /// <summary>
    /// Monotony below 2: of seven days two that load at most 45 % of the mean day, one of them nothing. (Deviations 1 and 0.55 of the mean;
    /// the other five make up 1.55: squares of 1 + 0.3025 + 1.55^2 / 5 = 1.783 at least, above the 7 / 4 - 1 / 4 = 6 / 4 that n - 1 asks for a
    /// monotony of 2 and the 7 / 4 that n does.) Two days off bring it below 1.5: squares of 2 + 4 / 5 = 2.8 and more, 6 / 2.8 is the square of 1.46.
    /// </summary>
    private void Spread()
    {
        if (problem.Days.Count != 7) return;
        const int lightest = 45, big = 10_000_000;
        var whole = LinearExpr.Sum(places.Select(Load)) + problem.Days.Sum(day => day.MatchAu) + problem.Fixed.Where(IsInside).Sum(session => session.Au);
        List<BoolVar> light = [];
        foreach (var day in problem.Days)
        {
            var isLight = Model.NewBoolVar($"light{day.Index}");
            var load = LinearExpr.Sum(places.Where(place => place.Day == day).Select(Load)) + day.MatchAu + problem.FixedOn(day.Index).Sum(session => session.Au);
            Model.Add(700 * load <= lightest * whole + big * (1 - isLight));
            light.Add(isLight);
        }
        var monotonous = Model.NewBoolVar("monotonous");
        Model.Add(LinearExpr.Sum(light) + 2 * monotonous >= 2);
        cost.AddTerm(monotonous, WeekPrices.Monotonous);
    }
}
