namespace BakeInsights.Inference;

/// <summary>One of the directions along which a second-order surface bends without twisting.</summary>
/// <param name="Bend">
/// The coefficient of the squared distance along the direction (an eigenvalue), with its standard error: Bisgaard and
/// Ankenman (1996), Standard errors for the eigenvalues in second-order response surface models, Technometrics 38,
/// 238-246.
/// </param>
/// <param name="Direction">The direction, a vector of length 1 whose largest component is positive.</param>
public sealed record PrincipalDirection(Term Bend, IReadOnlyList<double> Direction);
