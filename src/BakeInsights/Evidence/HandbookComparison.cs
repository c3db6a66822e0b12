using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>
/// What the journal says of a term, what handbooks say, and what both say together. Findings never rest on it: they
/// rest on the journal alone.
/// </summary>
/// <param name="Term">The term.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Journal">The journal alone.</param>
/// <param name="Handbook">The middle of the handbook's band, and the ends that hold 95 % of what it allows.</param>
/// <param name="Together">Both.</param>
/// <param name="ConflictPValue">
/// How often a journal would lie as far from the handbook as this one does, were both right.
/// </param>
/// <param name="Source">Where the band comes from.</param>
public sealed record HandbookComparison(
    string Term, string Unit, Estimate Journal, Estimate Handbook, Estimate Together, double ConflictPValue, string Source)
{
    /// <summary>Whether the journal and the handbook disagree by more than chance gives once in twenty times.</summary>
    public bool IsConflict => ConflictPValue < PriorConflict.Level;

    /// <summary>
    /// Compares every term of a rise-time model that a trade band speaks of. The band is taken as mean ± one standard
    /// deviation of a normal distribution.
    /// </summary>
    internal static Attempt<IReadOnlyList<HandbookComparison>> Of(FittedModel model)
    {
        TradeBand[] bands = [.. TradeBand.All.Where(band => model.Coefficient(band.Term) is not null)];
        if (bands.Length == 0 || model.Fit is not LeastSquaresFit fit)
        {
            return new FitProblem(
                FitProblemKind.TooFewRows,
                [model.Question.Name],
                "No term of the model is one that handbooks speak of, or its bakes aren't kept.",
                "Log the dough temperature and the yeast of each bake.");
        }

        return PriorRegression
            .Fit(fit.Design, fit.Response, [.. bands.Select(band => new NormalPrior(band.Term, band.Middle, band.HalfWidth))])
            .Select<IReadOnlyList<HandbookComparison>>(together =>
            [
                .. bands.Select(band =>
                {
                    var term = together.Coefficients.Single(coefficient => coefficient.Name == band.Term);
                    return new HandbookComparison(
                        band.Term,
                        model.Terms.Single(one => one.Name == band.Term).Unit,
                        Estimate.Of(term.DataAlone),
                        Estimate.Of(term.Prior!),
                        Estimate.Of(term.Together),
                        term.Conflict!.PValue,
                        band.Source);
                }),
            ]);
    }
}
