using Seasonwright.Desk;
using Seasonwright.Desk.Demo;
using Seasonwright.Desk.Streams;
using Seasonwright.Web;
using Seasonwright.Web.Host;

if (StartOptions.Read(args, out var problem) is not { } options)
{
    Console.Error.WriteLine(problem);
    return 2;
}
if (options.Help)
{
    Console.WriteLine(Words.Say("start.help"));
    return 0;
}

var clock = options.Today is { } day ? new DayClock(day) : TimeProvider.System;
var (workspace, trouble) = await Workspace.TryOpenAsync(options.Data, clock);
if (workspace is null)
{
    Console.Error.WriteLine(trouble);
    return 1;
}

await using (workspace)
{
    if (options.Demo && (await workspace.AddDemoAsync(workspace.LocalActor, workspace.Today)).Answer is CannotKeep cannot) Console.Error.WriteLine(cannot.Sentence);
    await using var door = await Door.OpenAsync(workspace, options);
    if (door is null)
    {
        Console.Error.WriteLine(Words.Say("start.port-taken", options.Port));
        return 1;
    }
    Console.WriteLine(Words.Say("start.ready", door.Address.GetLeftPart(UriPartial.Authority), workspace.Path));
    if (options.Browser) Desktop.Open(door.Address);
    await door.WaitAsync();
    return 0;
}
