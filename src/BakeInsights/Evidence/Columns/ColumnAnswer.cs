using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>What a journal says about a result and one of its columns.</summary>
public sealed class ColumnAnswer
{
    private readonly ColumnFit _fit;
    private readonly ColumnLevels _levels;

    internal ColumnAnswer(ColumnFit fit)
    {
        _fit = fit;
        _levels = fit.Rows.LevelsOf(fit.Rows.Column);
        Levels = Form == ColumnForm.Levels ? ColumnEffects.Means(fit) : [];
        Largest = ColumnEffects.Largest(fit);
        (Best, WhyNoBest) = Form == ColumnForm.Curve ? ColumnEffects.Best(fit) : (null, "");
        Caveats = [.. ColumnFindings.Caveats(fit)];
        Finding = ColumnFindings.Of(fit, Largest);
    }

    /// <summary>The measure that the answer explains.</summary>
    public Measure Result => _fit.Rows.Question.Result;

    /// <summary>What the result is called in sentences.</summary>
    public string ResultName => _fit.Rows.Question.Name;

    /// <summary>The name of the column.</summary>
    public string Column => _fit.Rows.Column.Name;

    /// <summary>The column's name for people.</summary>
    public string ColumnTitle => _fit.Rows.Column.Title;

    /// <summary>What the column's numbers measure.</summary>
    public Dimension ColumnDimension => _fit.Rows.Column.Dimension;

    /// <summary>How the result may go with the column.</summary>
    public ColumnForm Form => _fit.Rows.Form;

    /// <summary>The blocks, each with its F test; one in which all bakes are alike is not among them.</summary>
    public IReadOnlyList<BlockTest> Blocks => _fit.BlockTests;

    /// <summary>The terms of the causes that were held still.</summary>
    public IReadOnlyList<string> HeldStill => [.. _fit.Rows.HeldStill.Select(term => term.Name)];

    /// <summary>The terms of causes that the bakes can't support, with the reason.</summary>
    public IReadOnlyList<LeftOutTerm> LeftOutTerms => _fit.Rows.LeftOutTerms;

    /// <summary>The bakes that the answer rests on.</summary>
    public IReadOnlyList<Bake> Used => _fit.Rows.Bakes;

    /// <summary>The bakes that it does not rest on, by reason.</summary>
    public IReadOnlyList<LeftOutBakes> LeftOutBakes => _fit.Rows.LeftOutBakes;

    /// <summary>The fit; its rows are <see cref="Used"/>, and of times the response is the logarithm of minutes.</summary>
    public LeastSquaresFit Fit => _fit.Fit;

    /// <summary>The column's own terms: a line's slope, a curve's two, or each level less the first.</summary>
    public IReadOnlyList<Term> Terms => [.. Fit.Terms.Skip(Fit.Terms.Count - Test.ExtraDegreesOfFreedom)];

    /// <summary>The F test of the column, blocks and other causes in the model.</summary>
    public NestedComparison Test => _fit.Test;

    /// <summary>How often chance alone would let the column matter as clearly as this, if it didn't.</summary>
    public double PValue => Test.PValue!.Value;

    /// <summary>The mean of each level, in the levels' order; empty for a line or a curve.</summary>
    public IReadOnlyList<LevelMean> Levels { get; }

    /// <summary>
    /// The largest difference: between two levels, along the line from its least to its greatest number, or between two
    /// points of the curve within those numbers.
    /// </summary>
    public ColumnDifference Largest { get; }

    /// <summary>
    /// The number of the column at a curve's highest point, with Fieller's interval; null where there is none.
    /// </summary>
    public Estimate? Best { get; }

    /// <summary>Why a curve has no best number; empty where it has, or for other forms.</summary>
    public string WhyNoBest { get; }

    /// <summary>The result along a line or a curve, blocks and other causes as in the average bake used.</summary>
    /// <param name="number">The column's number, in its canonical unit.</param>
    /// <exception cref="InvalidOperationException">The answer is of levels.</exception>
    public CurvePoint At(double number)
    {
        var row = _fit.AverageRow(ColumnEffects.OwnAt(Form, number));
        return new CurvePoint(
            number, _fit.Scale.Back(Fit.Combination(row).Estimate),
            _fit.Scale.Back(Fit.MeanInterval(row, ModelAnswer.Level)), _fit.Scale.Back(Fit.PredictionInterval(row, ModelAnswer.Level)));
    }

    /// <summary>
    /// Each bake's result, moved by the fit to the average block and the average of the other causes: what is left differs
    /// by the column and chance. In the result's canonical unit, in the order of <see cref="Used"/>.
    /// </summary>
    public IReadOnlyList<double> ResultsHeldStill()
    {
        var own = Terms.Count;
        return
        [
            .. Enumerable.Range(0, Used.Count).Select(row => _fit.Scale.Back(
                Fit.Combination(_fit.AverageRow([.. Fit.Design.Row(row).TakeLast(own)])).Estimate + Fit.Residuals[row])),
        ];
    }

    /// <summary>The number of the column that a bake has; null for a text.</summary>
    public double? NumberOf(Bake bake) => _fit.Rows.Column.Number(bake);

    /// <summary>The level of a bake used, as <see cref="Levels"/> spells it.</summary>
    public string LevelOf(Bake bake) => _levels.NameOf(bake);

    /// <summary>What to bear in mind, one sentence each.</summary>
    public IReadOnlyList<string> Caveats { get; }

    /// <summary>The answer as one question of a family, not yet judged.</summary>
    public Finding Finding { get; }
}
