namespace BakeInsights;

/// <summary>What a step of a cause does to a dough, by a fitted model.</summary>
/// <param name="Step">The difference in the result's canonical unit.</param>
/// <param name="StepPct">In percent, where the model is on the logarithm; otherwise null.</param>
/// <param name="Bend">How far the mean of a step up and a step down lies from the dough; null where the model is straight.</param>
internal sealed record CauseEffect(Estimate Step, Estimate? StepPct, Estimate? Bend)
{
    /// <summary>The effect on a dough of these settings; null when the model has no term of the question.</summary>
    public static CauseEffect? Of(CauseQuestion question, FittedModel model, DoughSettings settings)
    {
        if (question.Terms.All(term => model.Coefficient(term) is null))
        {
            return null;
        }

        var (here, up, down) = (Row(model, settings), Row(model, question.Step.From(settings, 1)), Row(model, question.Step.From(settings, -1)));
        var bend = Difference(model, [.. up.Zip(down, (above, below) => (above + below) / 2)], here);
        var isBent = model.Selection.Terms.Any(term => question.Terms.Contains(term.Name) && term.LevelsNeeded > 2);

        // Asked about the bend alone, what counts is how a step further off departs from the straight line.
        var step = question.IsAboutTheBend ? bend : Difference(model, up, here);
        var scale = question.Model.Scale;
        return new(
            scale.Difference(step, scale.Back(model.Fit.Combination(here).Estimate)),
            scale.Percent(step),
            isBent && !scale.IsLogarithmic ? bend : null);
    }

    private static IReadOnlyList<double> Row(FittedModel model, DoughSettings settings) => model.Row(measure => settings[measure]);

    private static Estimate Difference(FittedModel model, IReadOnlyList<double> row, IReadOnlyList<double> from) =>
        Estimate.Of(model.Fit.Combination([.. row.Zip(from, (one, other) => one - other)]));
}
