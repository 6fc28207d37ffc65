namespace Seasonwright.Core.Squad;

/// <summary>How a report came.</summary>
public enum ReportedHow
{
    InPerson,
    Phone,
    Message,
    Paper,
}
