using System.Globalization;
using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>What a column's fit says in the result's own unit.</summary>
internal static class ColumnEffects
{
    private const double Level = ModelAnswer.Level;

    /// <summary>The mean of each level.</summary>
    public static IReadOnlyList<LevelMean> Means(ColumnFit fit)
    {
        var levels = fit.Rows.LevelsOf(fit.Rows.Column);
        return
        [
            .. levels.Names.Select((name, level) =>
            {
                var mean = fit.Fit.Combination(fit.AverageRow(Indicator(levels.Names.Count, level)));
                var interval = fit.Scale.Back(mean.Interval(Level));
                return new LevelMean(name, levels.NumberOf(level), levels.Count(level), new Estimate(fit.Scale.Back(mean.Estimate), interval.Low, interval.High));
            }),
        ];
    }

    /// <summary>The largest difference that the fit has; the interval counts that it was picked.</summary>
    public static ColumnDifference Largest(ColumnFit fit) => fit.Rows.Form switch
    {
        ColumnForm.Levels => OfLevels(fit),
        ColumnForm.Line => Between(fit, Tried(fit).Least, Tried(fit).Most),
        _ => OfCurve(fit),
    };

    /// <summary>The difference between two levels of a fit, or two points, that another fit found.</summary>
    public static ColumnDifference? Same(ColumnFit fit, ColumnDifference of)
    {
        if (fit.Rows.Form != ColumnForm.Levels)
        {
            return Between(fit, of.FromNumber!.Value, of.ToNumber!.Value);
        }

        var names = fit.Rows.LevelsOf(fit.Rows.Column).Names.ToList();
        var (from, to) = (names.IndexOf(of.From), names.IndexOf(of.To));
        return from < 0 || to < 0 ? null : Between(fit, from, to);
    }

    /// <summary>Where a curve is highest, or why it is so nowhere.</summary>
    public static (Estimate? Best, string WhyNone) Best(ColumnFit fit)
    {
        var name = fit.Rows.Column.Name;
        if (!QuadraticVertex.Of(fit.Fit, name, name + ColumnFit.SquaredSuffix, Level).TryGet(out var vertex, out _)
            || vertex.Location.Estimate is not { } best)
        {
            return (null, "The fitted curve doesn't bend, so it has no top.");
        }

        var (least, most) = Tried(fit);
        return vertex.Kind == VertexKind.Minimum ? (null, "The fitted curve doesn't bend down, so it has no top.")
            : best < least || best > most ? (null, "The curve's top lies outside what was tried.")
            : (new Estimate(best, vertex.Location.Low, vertex.Location.High), "");
    }

    /// <summary>The column's own terms at a number.</summary>
    public static double[] OwnAt(ColumnForm form, double number) => form switch
    {
        ColumnForm.Line => [number],
        ColumnForm.Curve => [number, number * number],
        _ => throw new InvalidOperationException("An answer of levels has no line or curve."),
    };

    /// <summary>The least and the greatest number of the bakes used.</summary>
    public static (double Least, double Most) Tried(ColumnFit fit)
    {
        double[] numbers = [.. fit.Rows.Bakes.Select(bake => fit.Rows.Column.Number(bake)!.Value)];
        return (numbers.Min(), numbers.Max());
    }

    private static ColumnDifference OfLevels(ColumnFit fit)
    {
        var count = fit.Rows.LevelsOf(fit.Rows.Column).Names.Count;
        double Mean(int level) => level == 0 ? 0 : fit.Fit.Terms[fit.Fit.Terms.Count - count + level].Estimate;
        var (lowest, highest) = count == 2
            ? (0, 1)
            : (Enumerable.Range(0, count).MinBy(Mean), Enumerable.Range(0, count).MaxBy(Mean));
        return Between(fit, lowest, highest);
    }

    private static ColumnDifference Between(ColumnFit fit, int from, int to)
    {
        var levels = fit.Rows.LevelsOf(fit.Rows.Column);
        var (lower, upper) = (Indicator(levels.Names.Count, from), Indicator(levels.Names.Count, to));
        var difference = fit.Fit.Combination(fit.OwnWeights([.. upper.Zip(lower, (a, b) => a - b)]));
        return Said(
            fit, lower, difference, SimultaneousInterval.OfPairs(difference, levels.Names.Count, Level),
            (levels.Names[from], levels.NumberOf(from)), (levels.Names[to], levels.NumberOf(to)));
    }

    // A curve's largest difference is between two of its ends and its turn.
    private static ColumnDifference OfCurve(ColumnFit fit)
    {
        var (least, most) = Tried(fit);
        var (slope, bend) = (fit.Fit.Terms[^2].Estimate, fit.Fit.Terms[^1].Estimate);
        var turn = -slope / (2 * bend);
        double[] places = turn > least && turn < most ? [least, turn, most] : [least, most];
        double Height(double x) => (slope * x) + (bend * x * x);
        return Between(fit, places.MinBy(Height), places.MaxBy(Height));
    }

    private static ColumnDifference Between(ColumnFit fit, double from, double to)
    {
        var (lower, upper) = (OwnAt(fit.Rows.Form, from), OwnAt(fit.Rows.Form, to));
        var difference = fit.Fit.Combination(fit.OwnWeights([.. upper.Zip(lower, (a, b) => a - b)]));
        return Said(
            fit, lower, difference, SimultaneousInterval.OfCombinations(difference, lower.Length, Level),
            (Spelled(from), from), (Spelled(to), to));
    }

    private static ColumnDifference Said(
        ColumnFit fit, double[] lower, Term difference, Interval interval,
        (string Name, double? Number) from, (string Name, double? Number) to)
    {
        var start = fit.Scale.Back(fit.Fit.Combination(fit.AverageRow(lower)).Estimate);
        var change = new Estimate(difference.Estimate, interval.Low, interval.High);
        return new ColumnDifference(
            from.Name, to.Name, from.Number, to.Number, fit.Scale.Difference(change, start), fit.Scale.Percent(change));
    }

    private static double[] Indicator(int levels, int level) =>
        [.. Enumerable.Range(1, levels - 1).Select(other => other == level ? 1.0 : 0.0)];

    private static string Spelled(double number) => number.ToString("0.##", CultureInfo.InvariantCulture);
}
