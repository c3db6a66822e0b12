using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>
/// Expected values computed by R with tests/reference-data/r/ordinal.R: MASS's polr, and for raters the marginal
/// likelihood by R's integrate, which ordinal's clmm agrees with to 2e-6.
/// </summary>
public class OrdinalOracleTests
{
    private const double Tolerance = 1e-5;

    [Theory]
    [InlineData("line")]
    [InlineData("parabola")]
    public void Scores_by_hydration_have_the_expected_fit(string @case)
    {
        var fit = ByHydration(@case == "parabola");

        IsAsExpected(fit, @case);
        Assert.Null(fit.RaterSpread);
        Assert.Equal([2.0, 3, 4, 5], fit.Categories);
    }

    [Fact]
    public void Best_hydration_is_the_expected_one()
    {
        // Made-up example; its figures were computed in R and rounded.
        var fit = ByHydration(true);
        var (slope, bend) = (fit.Terms[0], fit.Terms[1]);

        var place = RatioInterval.Fieller(slope, bend, fit.Covariance(0, 1), 0.95);

        Close.Absolute(1.6114, slope.Estimate, 5e-5);
        Close.Absolute(-0.9141, bend.Estimate, 7e-5);
        Close.Absolute(71.53, 68 + (4 * -place.Estimate!.Value / 2), 5e-3);
        Close.Absolute(0.4124, ByHydration(false).Terms[0].StandardError, 5e-5);
    }

    [Fact]
    public void Tasting_without_regard_to_judges_has_the_expected_fit()
    {
        var (design, scores, _) = Tasting();

        IsAsExpected(CumulativeLogit.Fit(design, scores).Value, "tasting");
    }

    [Fact]
    public void Tasting_with_random_judges_has_the_expected_fit()
    {
        var (design, scores, judges) = Tasting();

        var fit = CumulativeLogit.Fit(design, scores, judges).Value;

        IsAsExpected(fit, "tasting rated");
        Close.Relative(Expected("tasting rated", "rater spread"), fit.RaterSpread!.Estimate, Tolerance);
        Close.Relative(Expected("tasting rated", "rater spread SE"), fit.RaterSpread.StandardError, 1e-4);
        Assert.Equal(judges.Distinct(), fit.RaterShifts.Select(shift => shift.Name));
        Assert.Empty(fit.Caveats);
    }

    internal static (Design Design, double[] Scores, string[] Judges) Tasting()
    {
        var data = ReferenceTable.Read("r/tasting.csv");
        double[] z = [.. data.Numbers("hydration").Select(h => (h - 68) / 4)];
        var design = new Design(
            new DesignColumn("z", z), new DesignColumn("z2", [.. z.Select(x => x * x)]), data.Column("salt"));
        return (design, data.Numbers("score"), data.Texts("judge"));
    }

    private static OrdinalFit ByHydration(bool parabola)
    {
        var data = ReferenceTable.Read("ordinal/hydration-scores.csv");
        double[] z = [.. data.Numbers("hydration").Select(h => (h - 68) / 4)];
        var design = new Design(new DesignColumn("z", z), new DesignColumn("z2", [.. z.Select(x => x * x)]));
        return CumulativeLogit.Fit(parabola ? design : design.Select("z"), data.Numbers("score")).Value;
    }

    private static void IsAsExpected(OrdinalFit fit, string @case)
    {
        foreach (var term in fit.Terms.Concat(fit.Thresholds))
        {
            var name = term.Name.Replace(" | ", "|", StringComparison.Ordinal);
            Close.Relative(Expected(@case, name), term.Estimate, Tolerance);
            Close.Relative(Expected(@case, $"{name} SE"), term.StandardError, Tolerance);
        }

        Close.Relative(Expected(@case, "log-likelihood"), fit.Summary.LogLikelihood, 1e-9);
    }

    private static double Expected(string @case, string quantity)
    {
        var table = ReferenceTable.Read("r/ordinal-expected.csv");
        var row = table.Texts("case").Zip(table.Texts("quantity")).ToList().IndexOf((@case, quantity));
        return table.Numbers("value")[row];
    }
}
