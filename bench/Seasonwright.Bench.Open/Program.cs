using System.Diagnostics;
using System.Globalization;
using Seasonwright.Bench.Open;

// make DIR EDITS     a data folder with one season of so many edits, made through the desk
// discard DIR        throws its snapshots away
// plain DIR          milliseconds to read the season's rows with plain SQLite, in this fresh process
// open DIR           milliseconds and mebibytes to open the season as a page does, in this fresh process, first and again
return args switch
{
    ["make", var folder, var edits] => await LongSeason.Make(folder, int.Parse(edits, NumberStyles.None, CultureInfo.InvariantCulture)),
    ["discard", var folder] => PlainRead.DiscardSnapshots(folder),
    ["plain", var folder] => Say(PlainRead.Run, folder),
    ["open", var folder] => await Opened(folder),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("make DIR EDITS | discard DIR | plain DIR | open DIR");
    return 2;
}

static int Say(Func<string, long> read, string folder)
{
    var watch = Stopwatch.StartNew();
    var rows = read(folder);
    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{watch.Elapsed.TotalMilliseconds:0} {rows}"));
    return 0;
}

static async Task<int> Opened(string folder)
{
    var before = Environment.WorkingSet;
    var watch = Stopwatch.StartNew();
    var number = await LongSeason.Open(folder);
    var first = watch.Elapsed.TotalMilliseconds;
    var memory = (Environment.WorkingSet - before) / 1048576.0;
    watch.Restart();
    await LongSeason.Open(folder);
    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{first:0} {watch.Elapsed.TotalMilliseconds:0} {memory:0} {number}"));
    return 0;
}
