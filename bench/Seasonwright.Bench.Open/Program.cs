using System.Globalization;
using Seasonwright.Bench.Open;

// make DIR EDITS     a data folder with one season of so many edits, made through the desk
// discard DIR        throws its snapshots away
// plain DIR          reads the season's rows with plain SQLite: ms, processor ms, rows
// open DIR           opens the season as a page does: ms, processor ms, the same two for opening again, MiB grown, log number
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
    var watch = new Watch();
    var rows = read(folder);
    Console.WriteLine($"{watch.Lap()} {Text(rows)}");
    return 0;
}

static async Task<int> Opened(string folder)
{
    var before = Environment.WorkingSet;
    var watch = new Watch();
    var number = await LongSeason.Open(folder);
    var first = watch.Lap();
    var memory = (Environment.WorkingSet - before) / 1048576;
    watch = new Watch();
    await LongSeason.Open(folder);
    Console.WriteLine($"{first} {watch.Lap()} {Text(memory)} {Text(number)}");
    return 0;
}

static string Text(long number) => number.ToString(CultureInfo.InvariantCulture);
