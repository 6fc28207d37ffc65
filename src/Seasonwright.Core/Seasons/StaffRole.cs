namespace Seasonwright.Core.Seasons;

public enum StaffRole
{
    StrengthAndConditioning,
    HeadCoach,
    AssistantCoach,
    Physiotherapist,
    Doctor,
    Analyst,
    Management,
    Other,
}
