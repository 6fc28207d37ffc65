using System.Globalization;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Core.Setups;
using Seasonwright.Core.Squad;
using Seasonwright.Documents.HandOut.Cards;
using static Seasonwright.Documents.HandOut.HandOutTexts;

namespace Seasonwright.Documents.HandOut.Home;

/// <summary>Sets, efforts and runs at home, as a player reads them alone.</summary>
public static class HomeWords
{
    /// <summary>"3 x 8, 2 x 12 kg", "3 x 8 to 20, leave 3".</summary>
    public static string Of(HomeLine line, LocaleSettings locale)
    {
        var (work, prescription) = (line.Work, line.Work.Prescription);
        var sets = line.UpTo is { } most && most > prescription.Amount ? Say(work.Exercise.IsOneSided ? "home.up-to-each" : "home.up-to", prescription.Sets, prescription.Amount, most) : WorkWords.Sets(prescription, work.Exercise);
        var hard = work.Load switch
        {
            { Made: not null } when line.UpTo is not null && work.Load.Reserve is { } left => Say("home.and-leave", WorkWords.Of(work.Load, work.Exercise, prescription, locale), Math.Max(2, left)),
            { Made: not null } => WorkWords.Of(work.Load, work.Exercise, prescription, locale),
            { Reserve: { } left } => Say("home.leave", left),
            _ => "",
        };
        return hard.Length > 0 ? Say("home.set", sets, hard) : sets;
    }

    /// <summary>"tempo 2-0-X-0 · rest 3 min".</summary>
    public static string How(HomeLine line, LocaleSettings locale) => string.Join(" · ", new[]
    {
        line.Work.Prescription.Tempo is { } tempo ? Say("work.tempo", tempo) : null,
        line.Work.Part.Rest > 0 ? SquadCards.Rest(line.Work.Part, locale) : null,
        line.Work.Exercise.Id == line.Work.Item.Exercise ? line.Work.Item.Note : null,
    }.OfType<string>());

    /// <summary>"6 x 300 m in 79 s", "25 min, about 4200 m", "6 x 300 m at RPE 8".</summary>
    public static string Of(AthleteRun run, LocaleSettings locale)
    {
        var each = (run.Run.Unit, run.Metres, run.Seconds) switch
        {
            (WorkUnit.Metres, { } metres, { } seconds) when run.IsOwnSpeed => Say("home.metres-in", metres, Time(seconds)),
            (WorkUnit.Seconds, { } metres, { } seconds) when run.IsOwnSpeed => Say("home.time-about", Time(seconds), metres),
            (WorkUnit.Metres, { } metres, _) => Say("home.metres-rpe", metres, Number(run.Run.Rpe)),
            (_, _, { } seconds) => Say("home.time-rpe", Time(seconds), Number(run.Run.Rpe)),
            _ => Say("home.as-long-rpe", Number(run.Run.Rpe)),
        };
        return run.Run.IsSteady ? each : Say("home.repeat", run.Run.Repetitions, each);
    }

    /// <summary>What the speed means, and the way between.</summary>
    /// <param name="test">By which it is run; null for who has none.</param>
    public static string How(AthleteRun run, RunTest? test, LocaleSettings locale) => string.Join(" · ", new[]
    {
        run.IsOwnSpeed && test is not null && run is { Metres: { } metres, Seconds: { } seconds }
            ? Say("home.own-speed", run.Run.Speed.Value, Time((int)Math.Round(1_000m * seconds / metres)))
            : Say("home.feels", Number(run.Run.Rpe), Talk(run.Run.Rpe)),
        run.Run is { IsSteady: false, Rest: > 0 } ? Say("home.walk", Time(run.Run.Rest)) : null,
    }.OfType<string>());

    /// <summary>How much somebody can still say. That comfortable speech ends about the first ventilatory threshold: Persinger R et al. 2004, Med Sci Sports Exerc 36(9):1632-1636; the other steps are common practice, no source.</summary>
    public static string Talk(Rpe rpe) => Say(rpe.Value switch { <= 3 => "home.talk.sentences", <= 4 => "home.talk.short", <= 6 => "home.talk.few", <= 8 => "home.talk.single", _ => "home.talk.none" });

    /// <summary>"79 s", "6:15", "25 min", "1:05 h".</summary>
    public static string Time(int seconds) => seconds < 120 && seconds % 60 != 0 ? Say("work.seconds", seconds)
        : seconds >= 3_600 ? Say("home.hours", seconds / 3_600, (seconds % 3_600 / 60).ToString("00", CultureInfo.InvariantCulture))
        : seconds % 60 == 0 ? Say("work.minutes", seconds / 60) : Say("home.clock", seconds / 60, (seconds % 60).ToString("00", CultureInfo.InvariantCulture));

    private static string Number(Rpe rpe) => rpe.Value.ToString("0.#", CultureInfo.InvariantCulture);
}
