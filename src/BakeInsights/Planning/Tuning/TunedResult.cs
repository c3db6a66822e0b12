using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>A result that formulas are tuned for: its model, and what is believed of the model's terms before any bake.</summary>
/// <param name="Question">The model, that of the journal's answers.</param>
/// <param name="Priors">What is believed of terms.</param>
/// <param name="BlockSd">How far groups, flours or bakers differ, as one standard deviation on the model's scale. Our own choice.</param>
internal sealed record TunedResult(Question Question, IReadOnlyList<NormalPrior> Priors, double BlockSd)
{
    /// <summary>The first rise, with the bands of the trade as the handbook comparison takes them.</summary>
    public static TunedResult RiseTime { get; } = new(
        BakeInsights.RiseTime.Question,
        [.. TradeBand.All.Select(band => new NormalPrior(band.Term, band.Middle, band.HalfWidth))],
        0.1);

    /// <summary>
    /// The loaf. That volume has an optimum in water is published (Czuchajowska et al. 1989), its figures are not; what a
    /// term may do is our own choice: two thirds of kitchens lose no more than 10 % of 4 mL/g five points or four degrees
    /// from their best.
    /// </summary>
    public static TunedResult LoafVolume { get; } = new(
        BakeInsights.LoafVolume.Question,
        [
            new(BakeInsights.LoafVolume.HydrationTerm, 0, 0.08),
            new(BakeInsights.LoafVolume.DoughTemperatureTerm, 0, 0.1),
            new(BakeInsights.LoafVolume.HydrationSquaredTerm, 0, 0.006),
            new(BakeInsights.LoafVolume.DoughTemperatureSquaredTerm, 0, 0.012),
            new(BakeInsights.LoafVolume.ProductTerm, 0, 0.01),
        ],
        0.2);

    /// <summary>The crumb score of the bakes, on one to five, with the loaf's causes; what they may do is our own choice.</summary>
    public static TunedResult Crumb { get; } = new(
        new Question(
            Measures.CrumbScore,
            "crumb score",
            Measures.CrumbScore.Of,
            ResultScale.Plain,
            "points",
            [Exclusion.Without(Measures.CrumbScore)],
            [.. BakeInsights.LoafVolume.Question.Candidates.Select(term => term with { Unit = term.Unit.Replace("mL/g", "points", StringComparison.Ordinal) })]),
        [
            new(BakeInsights.LoafVolume.HydrationTerm, 0, 0.15),
            new(BakeInsights.LoafVolume.DoughTemperatureTerm, 0, 0.2),
            new(BakeInsights.LoafVolume.HydrationSquaredTerm, 0, 0.015),
            new(BakeInsights.LoafVolume.DoughTemperatureSquaredTerm, 0, 0.03),
            new(BakeInsights.LoafVolume.ProductTerm, 0, 0.02),
        ],
        0.4);
}
