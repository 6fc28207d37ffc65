using Seasonwright.Core;
using Seasonwright.Core.Quantities;
using Seasonwright.Core.Seasons;
using Seasonwright.Documents.Read.Spans;

namespace Seasonwright.Documents.Read.Events;

/// <summary>An event while its questions are being asked.</summary>
/// <param name="read">What its days say; a doubt is kept until it is answered.</param>
internal sealed class EventDraft(EventLine line, SpanReading read)
{
    public EventLine Line => line;

    public SpanReading Read { get; private set; } = read;

    public string Title { get; set; } = line.Title;

    public DateOnly? From => Read.From;

    public DateOnly? To => Read.To;

    public RowState State { get; set; } = StateOf(read);

    public string? Part { get; set; } = PartText.Of(line.Part) ?? read.Part;

    public string? For { get; set; } = line.For;

    public Percent? Training { get; set; }

    /// <summary>One question about the share is enough.</summary>
    public bool IsTrainingAsked { get; set; }

    /// <summary>Rows of the same journey, itself first; empty for everything else.</summary>
    public List<EventDraft> Legs { get; } = [];

    /// <summary>Remarks that say nothing a field holds.</summary>
    public List<string> Notes { get; } = [.. line.Remarks];

    public List<string> Ask { get; } = [];

    /// <summary>What the questions about this event are about, the same in a later state of the list.</summary>
    public string Subject => $"{Spelling.Fold(line.Title)}|{Spelling.Fold(line.When)}";

    /// <summary>Takes other days, from an answer or from the rows of its journey.</summary>
    public void Take(SpanReading days) => (Read, State) = (days, StateOf(days));

    public EventRow Row() => new(line.Line, line.Kind, Title, From, To, Read.Only, Part, For, Training, line.Place, State == RowState.Waiting ? ValueList<Leg>.Empty : Journeys.LegsOf(this), Legs.Skip(1).Select(leg => leg.Line.Line).ToValueList(), Note, State, Ask.ToValueList());

    public TestDayRow TestDayRow() => new(line.Line, Title, From, To, Read.Only, Part, For, State, Ask.ToValueList());

    private string? Note => Notes.Count == 0 ? null : string.Join("; ", Notes);

    private static RowState StateOf(SpanReading read) => read.Doubt != SpanDoubt.None ? RowState.Waiting : read.IsTentative ? RowState.Provisional : RowState.Certain;
}
