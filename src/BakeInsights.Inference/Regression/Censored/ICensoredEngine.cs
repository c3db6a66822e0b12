namespace BakeInsights.Inference;

/// <summary>What the two ways of fitting a censored response answer, all of it on the logarithm.</summary>
internal interface ICensoredEngine
{
    /// <summary>The natural logarithm of the spread.</summary>
    Term? LogSpread { get; }

    /// <summary>The estimate of a combination of the coefficients.</summary>
    double Estimate(IReadOnlyList<double> weights);

    /// <summary>The covariance of two combinations.</summary>
    double Covariance(IReadOnlyList<double> first, IReadOnlyList<double> second);

    /// <summary>The confidence interval of a combination.</summary>
    ProfileInterval Interval(Term combination, IReadOnlyList<double> weights, double level);

    /// <summary>The quantity whose interval is that of a new response, from its mean.</summary>
    Term Prediction(Term mean);

    /// <summary>The fit as a whole.</summary>
    FitSummary Summary(CensoredValue[] values);

    /// <summary>A row.</summary>
    FitRow Row(int row, CensoredValue value, double median);
}
