using System.Globalization;
using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>What a journal says about one question, with all that it rests on.</summary>
public abstract class ModelAnswer
{
    /// <summary>The confidence of every interval.</summary>
    public const double Level = 0.95;

    /// <summary>The dough temperature that every model counts from, in °C.</summary>
    public const double CentreTemperatureC = Cause.CentreTemperatureC;

    /// <summary>The hydration that every model counts from, in percent.</summary>
    public const double CentreHydrationPct = Cause.CentreHydrationPct;

    private readonly FittedModel _model;
    private readonly IReadOnlyList<LeftOutBakes> _asideBefore;

    private protected ModelAnswer(FittedModel model, IReadOnlyList<LeftOutBakes> asideBefore, Measure result, string responseUnit)
    {
        Result = result;
        _model = model;
        _asideBefore = asideBefore;
        Terms = model.TermsIn(responseUnit);
        Typical = DoughSettings.MedianOf(Used);
    }

    /// <summary>The measure that the answer explains.</summary>
    public Measure Result { get; }

    /// <summary>The bakes that the answer rests on.</summary>
    public IReadOnlyList<Bake> Used => _model.Selection.Bakes;

    /// <summary>The bakes that it does not rest on, by reason.</summary>
    public IReadOnlyList<LeftOutBakes> LeftOutBakes => [.. _asideBefore, .. _model.Selection.LeftOutBakes];

    /// <summary>The terms that the journal can't support, with the reason.</summary>
    public IReadOnlyList<LeftOutTerm> LeftOutTerms => _model.Selection.LeftOutTerms;

    /// <summary>The coefficients, the intercept first.</summary>
    public IReadOnlyList<AnswerTerm> Terms { get; }

    /// <summary>The dough in the middle of the bakes used: the median of each cause.</summary>
    public DoughSettings Typical { get; }

    /// <summary>The standard deviation of the results about the fit, in the fit's own unit.</summary>
    public double ResidualSd => _model.Fit.ResidualStandardDeviation;

    /// <summary>The share of the variation that the terms account for.</summary>
    public double RSquared => _model.Fit.RSquared;

    /// <summary>The fit, for those who want to look closer; its rows are <see cref="Used"/>.</summary>
    public LeastSquaresFit Fit => _model.Fit;

    /// <summary>The model written out.</summary>
    public abstract string Model { get; }

    /// <summary>The result that the fit expects of each bake used, in its canonical unit.</summary>
    public abstract IReadOnlyList<double> Expected { get; }

    /// <summary>Looks at whether the answer can be trusted.</summary>
    public abstract IReadOnlyList<AnswerCheck> Checks { get; }

    /// <summary>What a reader has to bear in mind, one sentence each.</summary>
    public abstract IReadOnlyList<string> Caveats { get; }

    /// <summary>The coefficient of a term, or null when it was left out.</summary>
    public Term? Coefficient(string term) => _model.Coefficient(term);

    private protected FittedModel Fitted => _model;

    /// <summary>The check that no single bake carries the fit by itself.</summary>
    private protected AnswerCheck LargestLeverage()
    {
        // Twice the mean leverage: Hoaglin and Welsch 1978, "The hat matrix in regression and ANOVA",
        // American Statistician 32:17-22. Three times here, as at a dozen bakes twice is passed by chance alone.
        const double timesMean = 3;
        var largest = Enumerable.Range(0, Used.Count).MaxBy(row => Fit.Leverage[row]);
        var leverage = Fit.Leverage[largest];
        var passed = leverage <= timesMean * Terms.Count / Used.Count;
        return new AnswerCheck("largest_leverage", leverage, passed, passed
            ? "No single bake steers the fit by itself."
            : $"Bake {Used[largest].Id} lies far from the others and steers the fit.");
    }

    /// <summary>The check that no bake's result is far from what the fit expects.</summary>
    private protected AnswerCheck LargestResidual()
    {
        // Out of 50 bakes one lies beyond 2.5 by chance, and in one journal out of seven one lies beyond 3
        // (standard normal distribution).
        const double far = 3;
        var standardised = Enumerable.Range(0, Used.Count).Select(StandardisedResidual).ToList();
        var largest = Enumerable.Range(0, Used.Count).MaxBy(row => Math.Abs(standardised[row]));
        var passed = Math.Abs(standardised[largest]) <= far;
        return new AnswerCheck("largest_residual", standardised[largest], passed, passed
            ? "No bake's result lies far from what the fit expects of it."
            : $"Bake {Used[largest].Id} lies far from what the fit expects of it; look whether a number is mistyped.");
    }

    /// <summary>What every answer's reader has to bear in mind.</summary>
    private protected IEnumerable<string> CommonRemarks()
    {
        var cups = Used.Where(bake => bake.FlourByCup).Select(bake => 100 * bake.FlourRelativeSd).ToList();
        if (cups.Count > 0)
        {
            var (least, most) = (Percent(cups.Min()), Percent(cups.Max()));
            yield return $"{cups.Count} of {Used.Count} bakes had their flour by the cup, which leaves hydration and the other percentages "
                + $"uncertain by {(least == most ? least : $"{least} to {most}")} % of themselves; the intervals don't show that yet.";
        }

        yield return "A journal shows what went together, not what caused it; a bake made to find out settles more.";
    }

    private static string Percent(double value) => value.ToString("0.0", CultureInfo.InvariantCulture);

    private double StandardisedResidual(int row)
    {
        var scale = ResidualSd * Math.Sqrt(Math.Max(0, 1 - Fit.Leverage[row]));
        return scale > 0 ? Fit.Residuals[row] / scale : 0;
    }
}
