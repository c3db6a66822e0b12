using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>How far a question is open: the 95 % interval of its answer.</summary>
/// <param name="Low">The lower end, in the question's unit.</param>
/// <param name="High">The upper end.</param>
/// <param name="IsOpen">
/// Whether bakes leave the answer open over all that may be baked: then the ends are those of the allowed range.
/// </param>
public sealed record AnswerInterval(double Low, double High, bool IsOpen)
{
    /// <summary>Half of it: what stands behind ±.</summary>
    public double Half => (High - Low) / 2;

    /// <summary>The interval that a fit gives.</summary>
    /// <param name="question">The question.</param>
    /// <param name="fit">A fit with the question's own terms.</param>
    /// <param name="hydration">The allowed hydrations; a best one is looked for only among these.</param>
    internal static AnswerInterval Of(NarrowedQuestion question, ILinearFit fit, SettingLimits hydration) =>
        question.IsOptimum ? OfBest(fit, hydration) : OfStep(question, fit);

    private static AnswerInterval OfBest(ILinearFit fit, SettingLimits allowed)
    {
        var open = new AnswerInterval(allowed.Low, allowed.High, true);
        if (!QuadraticVertex.Of(fit, LoafVolume.HydrationTerm, LoafVolume.HydrationSquaredTerm, ModelAnswer.Level).TryGet(out var vertex, out _)
            || vertex.Kind != VertexKind.Maximum || vertex.Location.Kind is RatioSetKind.WholeLine or RatioSetKind.TwoRays)
        {
            return open;
        }

        var low = Math.Max(allowed.Low, Cause.CentreHydrationPct + vertex.Location.Low ?? double.NegativeInfinity);
        var high = Math.Min(allowed.High, Cause.CentreHydrationPct + vertex.Location.High ?? double.PositiveInfinity);

        // A top outside of what may be baked leaves open which of these is best.
        return low < high && (low > allowed.Low || high < allowed.High) ? new AnswerInterval(low, high, false) : open;
    }

    private static AnswerInterval OfStep(NarrowedQuestion question, ILinearFit fit)
    {
        var term = fit.Terms.First(each => each.Name == question.OwnTerms[0]);
        var step = question.Step.IsFactor ? Math.Log(question.Step.Size) : question.Step.Size;
        var interval = (term with { Estimate = term.Estimate * step, StandardError = term.StandardError * step }).Interval(ModelAnswer.Level);
        return new AnswerInterval(ResultScale.PercentOf(interval.Low), ResultScale.PercentOf(interval.High), false);
    }
}
