namespace Seasonwright.Core.Quantities;

/// <summary>Weights of a kind from the lightest to the heaviest in even steps, in one unit.</summary>
public sealed record WeightSteps(decimal From, decimal To, decimal Step, MassUnit Unit)
{
    public decimal From { get; init => field = Plain.Of(value); } = Plain.Of(From);

    public decimal To { get; init => field = Plain.Of(value); } = Plain.Of(To);

    public decimal Step { get; init => field = Plain.Of(value); } = Plain.Of(Step);
}
