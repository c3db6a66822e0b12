namespace BakeInsights.Inference;

/// <summary>The thresholds that diagnostics use. None is a law: beyond them a look is worth while.</summary>
public static class Thresholds
{
    /// <summary>The p value below which a test speaks.</summary>
    public static Threshold PValue { get; } =
        new(0.05, "Fisher (1925), Statistical Methods for Research Workers; common practice since");

    /// <summary>The largest variance inflation that is harmless.</summary>
    public static Threshold VarianceInflation { get; } =
        new(10, "Marquardt (1970), Technometrics 12, 591-612");

    /// <summary>The condition index from which near dependence of columns harms.</summary>
    public static Threshold ConditionIndex { get; } =
        new(30, "Belsley, Kuh and Welsch (1980), Regression Diagnostics, Wiley, section 3.2");

    /// <summary>Cook's distance of a row that moves the coefficients far.</summary>
    public static Threshold CooksDistance { get; } =
        new(1, "Cook and Weisberg (1982), Residuals and Influence in Regression, Chapman and Hall, section 3.5");

    /// <summary>The leverage that is high: this many times the mean leverage, which is columns over rows.</summary>
    public static Threshold LeverageOverMean { get; } =
        new(2, "Hoaglin and Welsch (1978), The American Statistician 32, 17-22");

    /// <summary>The weight below which a robust fit is said to have weighed a row down.</summary>
    public static Threshold RobustWeight { get; } = new(0.5, "common practice, no source");
}
