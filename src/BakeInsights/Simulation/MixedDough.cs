namespace BakeInsights;

/// <summary>What is really in the bowl, in g, whatever the journal says.</summary>
internal readonly record struct MixedDough(
    double FlourG, double WaterG, double SaltG, double YeastG, double SugarG, YeastKind YeastKind)
{
    public double Grams => FlourG + WaterG + SaltG + YeastG + SugarG;

    public double HydrationPct => Percent(WaterG);

    public double SaltPct => Percent(SaltG);

    public double SugarPct => Percent(SugarG);

    /// <summary>Yeast as instant yeast.</summary>
    public double YeastPct => Percent(YeastEquivalent.Instant(YeastG, YeastKind));

    private double Percent(double grams) => 100 * grams / FlourG;
}
