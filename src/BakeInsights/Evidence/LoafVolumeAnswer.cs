using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>What a journal says about the specific volume of the loaf.</summary>
public sealed class LoafVolumeAnswer : ModelAnswer
{
    internal LoafVolumeAnswer(FittedModel model)
        : base(model)
    {
        (BestHydration, WhyNoBestHydration) = FindBestHydration();
        Checks = [.. ChecksOfBakes()];
        Caveats = [.. Remarks()];
    }

    /// <inheritdoc/>
    public override string Model =>
        $"specific volume in mL/g, {(IsCurved ? "a curved surface" : "a plane")} in hydration less {Cause.CentreHydrationPct} % "
        + $"and dough temperature less {Cause.CentreTemperatureC} °C{WithBlocks}";

    /// <inheritdoc/>
    public override IReadOnlyList<AnswerCheck> Checks { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<string> Caveats { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<double> Expected => Fit.FittedValues;

    /// <summary>
    /// The hydration, in percent, that gives the most volume at the centre's temperature, with an interval by
    /// Fieller's theorem; null where the fitted surface has no top among the hydrations that were baked.
    /// </summary>
    public Estimate? BestHydration { get; }

    /// <summary>Why there is no best hydration, one sentence; empty when there is one.</summary>
    public string WhyNoBestHydration { get; }

    /// <summary>The specific volume in mL/g of a dough with these settings.</summary>
    /// <exception cref="ArgumentException">A setting that the model needs is not given.</exception>
    public CurvePoint At(DoughSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        var row = Fitted.Row(measure => settings[measure]);
        return new CurvePoint(
            settings[Measures.Hydration],
            Fitted.Fit.Combination(row).Estimate,
            Fitted.Fit.MeanInterval(row, Level),
            Fitted.Fit.PredictionInterval(row, Level));
    }

    /// <summary>The specific volume over a range of hydrations, in percent, at one dough temperature, in °C.</summary>
    public IReadOnlyList<CurvePoint> OverHydration(IEnumerable<double> hydrationsPct, double doughTemperatureC) =>
    [
        .. hydrationsPct.Select(percent => At(Typical
            .With(Measures.DoughTemperature, doughTemperatureC)
            .With(Measures.Hydration, percent))),
    ];

    /// <summary>
    /// The typical dough's volume over hydration and dough temperature, where it was baked; null where one of the two is
    /// no term, the bakes lie on a line, or they aren't kept.
    /// </summary>
    public LoafSurface? Surface() => LoafSurface.Of(this);

    private bool IsCurved => Terms.Any(term => IsCurvature(term.Name));

    private static bool IsCurvature(string term) =>
        term is not (FittedModel.Intercept or LoafVolume.HydrationTerm or LoafVolume.DoughTemperatureTerm);

    private (Estimate? Best, string WhyNone) FindBestHydration()
    {
        if (Coefficient(LoafVolume.HydrationSquaredTerm) is not { } square)
        {
            return (null, "The model is a straight line in hydration, and a line has no top.");
        }

        if (square.Estimate >= 0)
        {
            return (null, "The fitted curve doesn't bend down, so it has no top.");
        }

        // The product with temperature, counted from the centre, is nothing at the centre's temperature.
        if (!QuadraticVertex.Of(Fitted.Fit, LoafVolume.HydrationTerm, LoafVolume.HydrationSquaredTerm, Level).TryGet(out var vertex, out _)
            || vertex.Location.Estimate is not { } fromCentre)
        {
            return (null, "The fitted curve doesn't bend, so it has no top.");
        }

        var best = Hydration(fromCentre);
        var baked = RangeOf(Measures.Hydration)!;
        return best < baked.Least || best > baked.Most
            ? (null, "The curve's top lies outside the hydrations that were baked.")
            : (new Estimate(best, Hydration(vertex.Location.Low), Hydration(vertex.Location.High)), "");
    }

    private static double Hydration(double fromCentre) => Cause.CentreHydrationPct + fromCentre;

    private static double? Hydration(double? fromCentre) => Cause.CentreHydrationPct + fromCentre;

    private IEnumerable<string> Remarks()
    {
        if (BestHydration is { Low: null } or { High: null })
        {
            yield return "The best hydration has no closed interval: the journal can't rule out that volume hardly bends with hydration.";
        }

        foreach (var remark in CommonRemarks())
        {
            yield return remark;
        }
    }
}
