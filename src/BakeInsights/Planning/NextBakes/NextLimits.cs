using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Between which settings the next bakes may lie: those asked for, or those that were baked.</summary>
internal static class NextLimits
{
    /// <summary>Dough temperature, hydration and yeast, or the problem that a range is neither asked nor known.</summary>
    public static Attempt<IReadOnlyList<KitchenSteps>> Of(IReadOnlyList<Bake> bakes, NextBakesWish wish)
    {
        var baked = SettingRange.Of(bakes);
        List<KitchenSteps> steps = [];
        foreach (var setting in KitchenSteps.Settings)
        {
            var range = baked.FirstOrDefault(each => each.Measure == setting);
            if ((wish.Of(setting) ?? (range is null ? null : new SettingLimits(range.Least, range.Most))) is not { } limits)
            {
                return new FitProblem(
                    FitProblemKind.MissingValue,
                    [setting.Name],
                    $"No bake says its {setting.Words}, so what can be baked isn't known.",
                    $"Say the range of {setting.Words} that you can bake.");
            }

            // The straight line of rise times ends there, and so do doughs that anybody wants.
            if (setting == Measures.DoughTemperature && wish.DoughTemperatureC is null)
            {
                limits = new SettingLimits(Math.Min(limits.Low, TemperatureCoefficient.WarmestC), Math.Min(limits.High, TemperatureCoefficient.WarmestC));
            }

            steps.Add(KitchenSteps.Of(setting, limits, wish.Units));
        }

        return steps;
    }

    /// <summary>The problem that the question's own setting has too few values to choose from; null if it has enough.</summary>
    public static FitProblem? Fixed(NarrowedQuestion question, IReadOnlyList<KitchenSteps> steps)
    {
        var measure = question.Step.Cause.Measure;
        var needed = question.IsOptimum ? 3 : 2;
        return steps.Single(step => step.Measure == measure).Values(needed).Count >= needed ? null : new FitProblem(
            FitProblemKind.TooFewGroups,
            [measure.Name],
            $"The {measure.Words} is allowed so little room that it has fewer than {needed} values to choose from.",
            $"Say a wider range of {measure.Words} that you can bake.");
    }
}
