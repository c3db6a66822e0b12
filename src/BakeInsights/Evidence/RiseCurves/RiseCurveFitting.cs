using System.Globalization;
using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Fits one family's curve by nonlinear least squares.</summary>
internal static class RiseCurveFitting
{
    /// <summary>Twice the start, in starting sizes.</summary>
    private const double Doubled = 2;

    /// <summary>
    /// Readings whose scatter is below this share of the start lie on the curve to rounding. Common practice, no source.
    /// </summary>
    private const double NoScatter = 1e-9;

    /// <summary>The best fit of all starts; a problem if none comes to an end.</summary>
    public static Attempt<RiseCurveFit> Fit(RiseFamily family, RiseSeries series)
    {
        // Counted in first readings, so that the numbers are of one size whatever the unit.
        var unit = series.Sizes[0];
        double[] sizes = [.. series.Sizes.Select(size => size / unit)];
        var minutes = new Design(new DesignColumn(RiseColumns.Minutes.Stem, [.. series.Minutes]));
        var fits = RiseStart.Of(series.Minutes, sizes)
            .Select(start => NonlinearLeastSquares.Fit(family.ByLag(series.Minutes), minutes, sizes, start))
            .ToList();
        if (fits.Where(fit => fit.Succeeded).MinBy(fit => fit.Value.ResidualSumOfSquares) is not { } best)
        {
            return RiseCurveProblems.NoEnd(series);
        }

        return best.Value is { Summary.CorrectedAic: { } aicc } found && found.ResidualStandardDeviation > NoScatter
            ? Describe(family, found, minutes, sizes, unit, aicc)
            : RiseCurveProblems.NoScatter(series);
    }

    private static RiseCurveFit Describe(
        RiseFamily family, NonlinearFit fit, Design minutes, double[] sizes, double unit, double aicc)
    {
        double[] b = [.. fit.Terms.Select(term => term.Estimate)];
        var curve = family.Make(Math.Exp(b[RiseFamily.Ceiling]), Math.Exp(b[RiseFamily.Steepest]), b[RiseFamily.Lag]);
        var ceiling = Profiled(fit, RiseFamily.Ceiling).Through(logarithm => 1 + Math.Exp(logarithm));
        var doubling = curve.DoublingMin is { } at
            ? DoublingOf(family, [b[RiseFamily.Start], b[RiseFamily.Ceiling], b[RiseFamily.Steepest], at], minutes, sizes, ceiling)
            : null;
        return new RiseCurveFit(
            curve,
            unit * b[RiseFamily.Start],
            Profiled(fit, RiseFamily.Lag),
            Profiled(fit, RiseFamily.Steepest).Through(Math.Exp),
            ceiling,
            doubling,
            doubling is null ? NotReached(ceiling) : null,
            fit.ResidualStandardDeviation / b[RiseFamily.Start],
            aicc);
    }

    private static Estimate DoublingOf(
        RiseFamily family, double[] start, Design minutes, double[] sizes, Estimate ceiling)
    {
        var at = start[RiseFamily.Doubling];
        if (!NonlinearLeastSquares.Fit(family.ByDoubling(minutes.Columns[0].Values), minutes, sizes, start).TryGet(out var fit, out _))
        {
            return new Estimate(at, null, null);
        }

        var interval = fit.Interval(RiseFamily.Doubling, ModelAnswer.Level);

        // Where a ceiling of exactly doubled is within its interval, no time is too late.
        return new Estimate(at, interval.Low, ceiling.Low > Doubled ? interval.High : null);
    }

    private static Estimate Profiled(NonlinearFit fit, int place)
    {
        var interval = fit.Interval(place, ModelAnswer.Level);
        return new Estimate(fit.Terms[place].Estimate, interval.Low, interval.High);
    }

    private static string NotReached(Estimate ceiling) => string.Create(
        CultureInfo.InvariantCulture,
        $"The curve's ceiling is {ceiling.Value:F2} times the starting size, so it never reaches 2.");
}
