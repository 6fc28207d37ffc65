using Seasonwright.Desk.Streams;
using Seasonwright.Web.Seasons;

namespace Seasonwright.Web.Squad;

/// <summary>Why something was not done, beside the fields it concerns; what concerns none stands above the form.</summary>
internal static class FieldWords
{
    /// <param name="fields">Names of the form's fields.</param>
    public static (IReadOnlyDictionary<string, string> Wrong, IReadOnlyList<string> Refused) Of(Answer answer, params IReadOnlyList<string> fields)
    {
        var wrong = new SortedDictionary<string, string>(StringComparer.Ordinal);
        if (answer is not NotDone { Reasons: var reasons }) return (wrong, Refusals.Of(answer));
        foreach (var reason in reasons.Where(reason => fields.Contains(reason.Subject, StringComparer.Ordinal))) wrong.TryAdd(reason.Subject, reason.Sentence);
        return (wrong, [.. reasons.Where(reason => !fields.Contains(reason.Subject, StringComparer.Ordinal)).Select(reason => reason.Sentence)]);
    }
}
