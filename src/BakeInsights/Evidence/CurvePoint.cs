using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>What a model says at one value of a cause.</summary>
/// <param name="X">The cause, in its canonical unit; null when it was not given, and the model does without it.</param>
/// <param name="Estimate">The fitted result, in its canonical unit.</param>
/// <param name="Mean">Where the mean result of many such bakes lies.</param>
/// <param name="Prediction">Where the result of one more such bake lies.</param>
public sealed record CurvePoint(double? X, double Estimate, Interval Mean, Interval Prediction);
