namespace Seasonwright.Documents.Read.Events;

/// <summary>How far a row may be written into a season.</summary>
public enum RowState
{
    /// <summary>It may be written; questions it still has do not touch its days.</summary>
    Certain,

    /// <summary>It is written as provisional until its question is answered, or because the list calls it so.</summary>
    Provisional,

    /// <summary>Nothing is written for it until its question is answered.</summary>
    Waiting,
}
