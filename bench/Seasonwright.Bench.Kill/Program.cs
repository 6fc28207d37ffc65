using System.Diagnostics;
using System.Globalization;
using Seasonwright.Bench.Kill;

// write DIR SEED EDITS           appends the gestures of a seed and prints each one once it is acknowledged
// prove DIR SEED EDITS KILLS     kills that writer again and again and checks what it left; exit 1 if anything is wrong
// speed DIR SEED EDITS           appends per second, one gesture at a time
return args switch
{
    ["write", var folder, var seed, var edits] => await Writer.Run(folder, Number(seed), Number(edits), Console.OpenStandardOutput()),
    ["prove", var folder, var seed, var edits, var kills] => await Prove(folder, Number(seed), Number(edits), Number(kills)),
    ["speed", var folder, var seed, var edits] => await Speed(folder, Number(seed), Number(edits)),
    _ => Usage(),
};

static int Number(string text) => int.Parse(text, NumberStyles.None, CultureInfo.InvariantCulture);

static int Usage()
{
    Console.Error.WriteLine("write DIR SEED EDITS | prove DIR SEED EDITS KILLS | speed DIR SEED EDITS");
    return 2;
}

static async Task<int> Prove(string folder, int seed, int edits, int kills)
{
    var random = new Random(seed);
    var problems = 0;
    Console.WriteLine("| round | seed | killed | acknowledged | found after the kill | resent with the first answer | in the end | problems |");
    Console.WriteLine("|---|---|---|---|---|---|---|---|");
    for (var round = 1; round <= kills; round++)
    {
        // The first round is killed somewhere in its start, the others somewhere in their edits.
        var result = await KillRound.Run(Path.Combine(folder, FormattableString.Invariant($"{round}")), random.Next(), edits, duringStart: round == 1);
        problems += result.Problems.Count;
        Console.WriteLine(FormattableString.Invariant(
            $"| {round} | {result.Seed} | {(result.Killed ? "yes" : "too late")} | {result.Acknowledged} | {result.Found} | {result.Resent} | {result.Total} | {(result.Problems.Count == 0 ? "none" : string.Join("; ", result.Problems))} |"));
    }
    return problems == 0 ? 0 : 1;
}

static async Task<int> Speed(string folder, int seed, int edits)
{
    await Writer.Run(Path.Combine(folder, "warm"), seed, 50, Stream.Null);
    var watch = Stopwatch.StartNew();
    await Writer.Run(Path.Combine(folder, "measured"), seed, edits, Stream.Null);
    Console.WriteLine(FormattableString.Invariant(
        $"{edits} gestures in {watch.Elapsed.TotalSeconds:0.00} s, opening a new folder included: {edits / watch.Elapsed.TotalSeconds:0} a second, {watch.Elapsed.TotalMilliseconds / edits:0.00} ms each"));
    return 0;
}
