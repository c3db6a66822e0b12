namespace BakeInsights.Inference;

/// <summary>What a mixed model predicts of one group.</summary>
/// <param name="Group">The group's label.</param>
/// <param name="RowCount">How many rows the group has.</param>
/// <param name="Intercept">How far the group lies from the model's constant.</param>
/// <param name="Slope">How far the group's slope lies from the model's; null in a model without slopes.</param>
public sealed record GroupEffect(string Group, int RowCount, PredictedEffect Intercept, PredictedEffect? Slope);
