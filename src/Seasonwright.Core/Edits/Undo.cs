using Seasonwright.Core.Facts;

namespace Seasonwright.Core.Edits;

/// <summary>Taking steps back, and taking that back: the same path for both.</summary>
public static class Undo
{
    /// <summary>The step that takes <paramref name="steps"/> back, as one.</summary>
    /// <param name="now">The facts as they stand.</param>
    /// <param name="steps">The steps of one gesture, in the order they were made.</param>
    /// <param name="overtaken">The first place that no longer holds what the steps left there: a later change stands on it.</param>
    /// <returns>The inverse, or null when a later change stands in the way.</returns>
    public static Step? Of(FactSet now, IEnumerable<Step> steps, out Key? overtaken)
    {
        var done = steps.Aggregate(Step.Nothing, (sum, step) => sum.Then(step));
        overtaken = done.Changes.Where(change => !Equals(now[change.Key], change.After)).Select(change => (Key?)change.Key).FirstOrDefault();
        return overtaken is null ? done.Inverse : null;
    }
}
