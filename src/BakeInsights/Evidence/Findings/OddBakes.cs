using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Finds the bakes that lie far from what a model expects, or steer it.</summary>
internal static class OddBakes
{
    // The chance that any bake of an ordinary journal is called far off (Bonferroni's inequality over the bakes).
    private const double Chance = 0.05;

    /// <summary>The odd bakes of a model, in its order.</summary>
    public static IReadOnlyList<OddBake> Of(FittedModel model)
    {
        if (model.Fit is not LeastSquaresFit fit)
        {
            return [];
        }

        var freedom = fit.ResidualDegreesOfFreedom - 1;
        List<OddBake> odd = [];
        foreach (var row in RowInfluence.Of(fit))
        {
            var bake = model.Selection.Bakes[row.Row];
            var far = freedom >= 1 && row.DeletionStudentised is { } distance
                && new Term("", distance, 1, freedom).PValue < Chance / fit.N;
            if (far)
            {
                odd.Add(new OddBake(bake, row.Studentised > 0
                    ? $"its {model.Question.Name} lies far above what its settings lead to expect"
                    : $"its {model.Question.Name} lies far below what its settings lead to expect"));
            }
            else if (row.CooksDistance > Thresholds.CooksDistance.Value)
            {
                odd.Add(new OddBake(bake, $"its settings lie far from the others, so it steers the answer about {model.Question.Name}"));
            }
        }

        return odd;
    }
}
