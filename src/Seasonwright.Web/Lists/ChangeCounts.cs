using Seasonwright.Documents.Read;

namespace Seasonwright.Web.Lists;

/// <summary>How many changes of each kind a list makes, in words, the weightiest kind first.</summary>
internal static class ChangeCounts
{
    public static IEnumerable<string> Of(IEnumerable<ChangeKind> changes) => changes.GroupBy(kind => kind).OrderBy(kind => kind.Key).Select(kind => Words.Say($"change.count.{kind.Key}", kind.Count()));
}
