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

    /// <summary>What every answer from a journal has to be read with.</summary>
    public const string NotACause = "A journal shows what went together, not what caused it; a bake made to find out settles more.";

    private protected ModelAnswer(FittedModel model)
    {
        Fitted = model;
        Terms = model.Terms;
        Typical = DoughSettings.MiddleOf(model.Ranges);
    }

    /// <summary>The measure that the answer explains.</summary>
    public Measure Result => Fitted.Question.Result;

    /// <summary>How many bakes the answer rests on.</summary>
    public int UsedCount => Fitted.Basis.Used;

    /// <summary>
    /// Whether the answer rests on running sums: a journal of more than <see cref="JournalFit.KeptBakes"/> bakes
    /// keeps none of them. Then <see cref="Used"/> is empty, and what needs single bakes is not to be had.
    /// </summary>
    public bool IsFromSums => Fitted.Fit is not LeastSquaresFit;

    /// <summary>The bakes that the answer rests on.</summary>
    public IReadOnlyList<Bake> Used => IsFromSums ? [] : Fitted.Selection.Bakes;

    /// <summary>The bakes that it does not rest on, by reason.</summary>
    public IReadOnlyList<LeftOutBakes> LeftOutBakes => Fitted.LeftOutBakes;

    /// <summary>The terms that the journal can't support, with the reason.</summary>
    public IReadOnlyList<LeftOutTerm> LeftOutTerms => Fitted.Selection.LeftOutTerms;

    /// <summary>The coefficients, the intercept first.</summary>
    public IReadOnlyList<AnswerTerm> Terms { get; }

    /// <summary>The dough in the middle of the bakes used: the median of each cause, or the mean where the answer rests on sums.</summary>
    public DoughSettings Typical { get; }

    /// <summary>The standard deviation of the results about the fit, in the fit's own unit.</summary>
    public double ResidualSd => Fitted.Fit.ResidualStandardDeviation;

    /// <summary>The share of the variation that the terms account for.</summary>
    public double RSquared => Fitted.Fit.RSquared;

    /// <summary>The fit, for those who want to look closer; its rows are <see cref="Used"/>.</summary>
    /// <exception cref="InvalidOperationException">The answer rests on running sums.</exception>
    public LeastSquaresFit Fit => Fitted.Fit as LeastSquaresFit
        ?? throw new InvalidOperationException("The answer rests on running sums, and the single bakes are gone.");

    /// <summary>The model written out.</summary>
    public abstract string Model { get; }

    /// <summary>The groups of bakes that have a level of their own in the fit, in words: group, kind of flour, baker.</summary>
    public IReadOnlyList<string> Blocks => [.. Fitted.Blocks.Select(block => block.Words)];

    /// <summary>
    /// The result of each bake used as the fit takes it, in its canonical unit: the middle of a span between two looks.
    /// </summary>
    public IReadOnlyList<double> Observed => [.. Used.Select(bake => Fitted.Question.Observed(bake)!.Value)];

    /// <summary>The result that the fit expects of each bake used, in its canonical unit.</summary>
    public abstract IReadOnlyList<double> Expected { get; }

    /// <summary>Looks at whether the answer can be trusted.</summary>
    public abstract IReadOnlyList<AnswerCheck> Checks { get; }

    /// <summary>What a reader has to bear in mind, one sentence each.</summary>
    public abstract IReadOnlyList<string> Caveats { get; }

    /// <summary>Over which values a setting was tried; null when no bake used has it.</summary>
    public SettingRange? RangeOf(Measure setting) => Fitted.Ranges.FirstOrDefault(range => range.Measure == setting);

    /// <summary>The coefficient of a term, or null when it was left out.</summary>
    public Term? Coefficient(string term) => Fitted.Coefficient(term);

    /// <summary>The blocks as an ending of the model's description; empty without any.</summary>
    private protected string WithBlocks => Blocks.Count == 0 ? "" : $"; a level for each {string.Join(" and each ", Blocks)}";

    private protected FittedModel Fitted { get; }

    /// <summary>The looks at single bakes; none where they aren't kept.</summary>
    private protected IEnumerable<AnswerCheck> ChecksOfBakes() => IsFromSums ? [] : [LargestLeverage(), LargestResidual()];

    // No single bake may carry the fit by itself.
    private AnswerCheck LargestLeverage()
    {
        // Twice the mean leverage: Hoaglin and Welsch 1978, "The hat matrix in regression and ANOVA",
        // American Statistician 32:17-22. Three times here, as at a dozen bakes twice is passed by chance alone.
        const double timesMean = 3;
        var largest = Enumerable.Range(0, Used.Count).MaxBy(row => Fit.Leverage[row]);
        var leverage = Fit.Leverage[largest];
        var passed = leverage <= timesMean * Fit.Terms.Count / Used.Count;
        return new AnswerCheck("largest_leverage", leverage, passed, passed
            ? "No single bake steers the fit by itself."
            : $"Bake {Used[largest].Id} lies far from the others and steers the fit.");
    }

    // No bake's result may be far from what the fit expects.
    private AnswerCheck LargestResidual()
    {
        // Of 50 bakes one or more lies beyond 2.5 by chance in every second journal, and beyond 3 in one out of eight
        // (standard normal distribution).
        const double far = 3;
        var standardised = RowInfluence.Of(Fit).Select(row => row.Studentised ?? 0).ToList();
        var largest = Enumerable.Range(0, Used.Count).MaxBy(row => Math.Abs(standardised[row]));
        var passed = Math.Abs(standardised[largest]) <= far;
        return new AnswerCheck("largest_residual", standardised[largest], passed, passed
            ? "No bake's result lies far from what the fit expects of it."
            : $"Bake {Used[largest].Id} lies far from what the fit expects of it; look whether a number is mistyped.");
    }

    /// <summary>What every answer's reader has to bear in mind.</summary>
    private protected IEnumerable<string> CommonRemarks()
    {
        if (Fitted.Basis.Cups > 0)
        {
            var (least, most) = (Percent(Fitted.Basis.LeastFlourSd), Percent(Fitted.Basis.MostFlourSd));
            yield return $"{Fitted.Basis.Cups} of {UsedCount} bakes had their flour by the cup, which leaves hydration and the other percentages "
                + $"uncertain by {(least == most ? least : $"{least} to {most}")} % of themselves; the intervals don't show that yet.";
        }

        foreach (var block in Fitted.EntangledBlocks)
        {
            yield return block.Caveat;
        }

        if (IsFromSums)
        {
            yield return $"The journal is too long to keep its bakes: it has more than {JournalFit.KeptBakes}, which went into running sums. "
                + "The terms are those that every tenth of the first bakes supports, the typical dough is the mean, and no single bake was looked at. "
                + "No group, flour or baker has a level of its own.";
        }

        yield return NotACause;
    }

    private static string Percent(double share) => (100 * share).ToString("0.0", CultureInfo.InvariantCulture);
}
