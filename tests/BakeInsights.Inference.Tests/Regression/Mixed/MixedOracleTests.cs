using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>Expected values computed by R's lme4 and lmerTest with tests/reference-data/r/mixed.R.</summary>
public class MixedOracleTests
{
    /// <summary>lme4 stops where its search stops: fixed effects are good to 1e-7, variances to 1e-5.</summary>
    private const double Coefficient = 1e-7, Variance = 1e-5, Likelihood = 1e-8, Degrees = 1e-3;

    private static readonly ReferenceTable Expected = ReferenceTable.Read("r/mixed-expected.csv");

    [Theory]
    [InlineData("dyestuff", MixedCriterion.Restricted)]
    [InlineData("dyestuff", MixedCriterion.Full)]
    [InlineData("sleepstudy", MixedCriterion.Restricted)]
    [InlineData("sleepstudy", MixedCriterion.Full)]
    [InlineData("sleepstudy slope", MixedCriterion.Restricted)]
    [InlineData("sleepstudy slope", MixedCriterion.Full)]
    [InlineData("bromate", MixedCriterion.Restricted)]
    [InlineData("bromate", MixedCriterion.Full)]
    [InlineData("pastry", MixedCriterion.Restricted)]
    [InlineData("pastry", MixedCriterion.Full)]
    [InlineData("unequal", MixedCriterion.Restricted)]
    [InlineData("unequal", MixedCriterion.Full)]
    [InlineData("unequal slope", MixedCriterion.Restricted)]
    [InlineData("unequal slope", MixedCriterion.Full)]
    public void Fit_has_the_expected_effects_variances_and_degrees_of_freedom(string name, MixedCriterion criterion)
    {
        var fit = MixedCases.Fit(name, criterion);

        Agrees(name, fit, withDegrees: true);
        Assert.Equal(MixedBoundary.Inside, fit.Boundary);
        Assert.Equal(name == "unequal slope" ? 1 : 0, fit.Caveats.Count);
    }

    [Theory]
    [InlineData(MixedCriterion.Restricted)]
    [InlineData(MixedCriterion.Full)]
    public void Zero_variance_between_batches_is_found_and_said(MixedCriterion criterion)
    {
        var fit = MixedCases.Fit("dyestuff2", criterion);

        Agrees("dyestuff2", fit, withDegrees: false);
        Assert.Equal(MixedBoundary.NoVariance, fit.Boundary);
        Assert.Equal(0, fit.Variances.Intercept);
        Assert.All(fit.GroupEffects, effect =>
        {
            Assert.Equal((0, 0), (effect.Intercept.Value, effect.Intercept.ConditionalDeviation));
            Assert.Null(effect.Intercept.Interval(0.95));
        });
        Assert.Equal(
            "The groups differ no more than chance within them explains: their variance is estimated as 0, "
                + "their effects as 0, and the intervals count the rows as if they were independent.",
            Assert.Single(fit.Caveats));
    }

    [Theory]
    [InlineData(MixedCriterion.Restricted)]
    [InlineData(MixedCriterion.Full)]
    public void Correlation_of_one_is_found_and_said(MixedCriterion criterion)
    {
        var fit = MixedCases.Fit("edge", criterion);

        Agrees("edge", fit, withDegrees: true);
        Assert.Equal(MixedBoundary.OneDirectionOnly, fit.Boundary);
        Close.Absolute(1, fit.Variances.Correlation, 1e-12);
        Assert.Equal(
            "The groups vary in one combination of intercept and slope only: a variance is estimated as 0, "
                + "or the correlation as -1 or 1.",
            Assert.Single(fit.Caveats));
    }

    private static void Agrees(string name, MixedFit fit, bool withDegrees)
    {
        double Value(string quantity) => MixedCases.Value(Expected, name, fit.Criterion, quantity);
        foreach (var term in fit.Terms)
        {
            Close.Relative(Value(term.Name), term.Estimate, Coefficient);
            Close.Relative(Value($"{term.Name} SE"), term.StandardError, Variance);
            if (withDegrees)
            {
                Close.Relative(Value($"{term.Name} df"), term.DegreesOfFreedom, Degrees);
            }
        }

        Close.Relative(Value("residual variance"), fit.Variances.Residual, Variance);
        Close.Absolute(
            Value("intercept variance"),
            fit.Variances.Intercept,
            Variance * (fit.Variances.Intercept > 0 ? fit.Variances.Intercept : fit.Variances.Residual));
        Close.Relative(Value("log-likelihood"), fit.Summary.LogLikelihood, Likelihood);
        Close.Relative(Value("last fitted"), fit.Rows[^1].Fitted, 1e-6);
        if (fit.Variances.Slope is not null)
        {
            Close.Relative(Value("slope variance"), fit.Variances.Slope, Variance);
            Close.Relative(Value("covariance"), fit.Variances.Covariance, 1e-4);
        }

        foreach (var effect in new[] { fit.GroupEffects[0], fit.GroupEffects[^1] })
        {
            var unit = Variance * fit.Summary.ResidualStandardDeviation!.Value;
            Close.Absolute(Value($"effect of {effect.Group}"), effect.Intercept.Value, unit);
            Close.Absolute(Value($"deviation of {effect.Group}"), effect.Intercept.ConditionalDeviation, unit);
            if (effect.Slope is { } slope)
            {
                Close.Relative(Value($"slope of {effect.Group}"), slope.Value, Variance);
            }
        }
    }
}
