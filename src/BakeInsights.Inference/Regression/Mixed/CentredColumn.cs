namespace BakeInsights.Inference;

/// <summary>
/// A column about its mean in units of its spread, so that a group's level is that in the data's middle.
/// </summary>
/// <param name="Values">The values.</param>
/// <param name="Mean">The mean of the column.</param>
/// <param name="Spread">The unit.</param>
internal sealed record CentredColumn(double[] Values, double Mean, double Spread)
{
    /// <summary>Centres a column; null if it is the same in every row.</summary>
    public static CentredColumn? Of(DesignColumn column)
    {
        if (!column.Values.Any(v => v != column.Values[0]))
        {
            return null;
        }

        var mean = column.Values.Average();
        var spread = Math.Sqrt(column.Values.Average(v => (v - mean) * (v - mean)));
        return new CentredColumn([.. column.Values.Select(v => (v - mean) / spread)], mean, spread);
    }

    /// <summary>
    /// The weights of (level, slope) in the column's middle and unit that make the intercept, at 0 of the column.
    /// </summary>
    public double[] Intercept => [1, -Mean / Spread];

    /// <summary>The weights that make the slope in the column's own unit.</summary>
    public double[] Slope => [0, 1 / Spread];
}
