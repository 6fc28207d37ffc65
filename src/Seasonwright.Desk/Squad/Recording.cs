using Seasonwright.Core.Edits;
using Seasonwright.Desk.Streams;
using Seasonwright.Store;

namespace Seasonwright.Desk.Squad;

/// <summary>Writing rows of people, answered like every other action.</summary>
internal static class Recording
{
    /// <param name="write">Whether it is written: who or what it is about is there.</param>
    /// <param name="gone">"team" or "athlete": what is then told to be gone.</param>
    public static async Task<Answer> KeepAsync(Func<Task<bool>> write, string gone)
    {
        try
        {
            return await write() ? new Kept(1) : new NotDone(Gone(gone));
        }
        catch (StoreTrouble trouble)
        {
            return new CannotKeep(trouble.Message);
        }
    }

    private static Refusal Gone(string what) => what == "team" ? Refusal.Say("stream-gone", "team") : Refusal.Say("athlete-gone", "athlete");
}
