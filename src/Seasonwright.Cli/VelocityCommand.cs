using System.CommandLine;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Strength;
using Seasonwright.Documents.Read.Velocities;

namespace Seasonwright.Cli;

/// <summary>Fits a load-velocity profile to a list of loads and velocities and reads the maximum off it.</summary>
internal static class VelocityCommand
{
    private const decimal MostThreshold = 2;

    public static Command Make(Terminal terminal)
    {
        var file = Parameters.File("FILE", "help.velocity.file");
        var threshold = Parameters.Number("--threshold", "help.velocity.threshold", "MS", speed => speed is > 0 and <= MostThreshold, "arguments.threshold", MostThreshold);
        var format = Parameters.Word("--format", "help.velocity.format", VelocityFormat.Text);
        var command = new Command("velocity", Texts.Say("help.velocity")) { file, threshold, format };
        command.SetAction(call => (int)Run(call.GetRequiredValue(file), (double)call.GetValue(threshold), call.GetValue(format) ?? VelocityFormat.Text, terminal));
        return command;
    }

    private static Exit Run(string file, double threshold, VelocityFormat format, Terminal terminal)
    {
        if (ListFiles.Open(file, terminal) is not { } source) return Exit.BadInput;
        var list = VelocityReader.Read(source);
        foreach (var problem in list.Problems) terminal.Complain(problem);
        if (list.Problems.Count > 0) return Exit.BadInput;
        var (profile, trouble) = VelocityProfile.Of(list.Points);
        var (estimate, none) = profile?.OneRepMax(threshold) ?? default;
        if (profile is null || estimate is null)
        {
            terminal.Complain(IdOf(trouble ?? none!.Value), source.Name, threshold, VelocityProfile.MostTimesLifted);
            return trouble == VelocityTrouble.OneLoad ? Exit.BadInput : Exit.Refused;
        }
        if (format == VelocityFormat.Json) terminal.Out.Write(Json.Of(VelocityReport.Of(profile, threshold, estimate, list.Unit)));
        else Tell(profile, threshold, estimate, list.Unit == MassUnit.Pound ? "lb" : "kg", terminal);
        if (estimate.IsBelowLifted) terminal.Complain("velocity.lifted");
        if (estimate.IsFar) terminal.Complain("velocity.far", 100 * estimate.ShareLifted);
        return Exit.Done;
    }

    private static string IdOf(VelocityTrouble trouble) => trouble switch
    {
        VelocityTrouble.OneLoad => "velocity.one-load",
        VelocityTrouble.NotFalling => "velocity.not-falling",
        VelocityTrouble.BelowThreshold => "velocity.below",
        _ => "velocity.far-off",
    };

    private static void Tell(VelocityProfile profile, double threshold, VelocityOneRepMax estimate, string unit, Terminal terminal)
    {
        var line = profile.VelocityOnLoad;
        terminal.Tell("velocity.line", line.Count, line.Intercept, -line.Slope);
        if (line.Error is { } error) terminal.Tell("velocity.fit", line.R2, error);
        terminal.Tell("velocity.rest", profile.LoadAtRest, unit);
        if (estimate.Interval is var (low, high)) terminal.Tell("velocity.max", threshold, estimate.Load, unit, low, high);
        else terminal.Tell(line.Count == 2 ? "velocity.max.two" : "velocity.max.open", threshold, estimate.Load, unit);
        terminal.Tell("velocity.other", estimate.OtherDirection, unit);
        terminal.Tell("velocity.caution");
    }

    private enum VelocityFormat
    {
        Text,
        Json,
    }
}
