namespace BakeInsights;

/// <summary>What becomes of the dough in the oven.</summary>
public static class Loaves
{
    /// <summary>
    /// Specific volume, millilitres for each gram of cooled loaf. The volume is that of the loaf by seed
    /// displacement (the subject of AACC Approved Method 10-05.01, cited from memory). Some sources divide by the
    /// dough's mass instead; this one never does.
    /// </summary>
    public static double SpecificVolume(double loafVolumeMl, double loafG)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(loafG);
        return loafVolumeMl / loafG;
    }

    /// <summary>
    /// Bake loss: the part of the dough's mass, in percent, that is no longer in the cooled loaves (trade
    /// dictionary, "bake-out loss"). Negative when the loaves weigh more than the dough, which no oven does.
    /// </summary>
    public static double BakeLossPct(double doughG, double loavesG)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(doughG);
        return 100 * (doughG - loavesG) / doughG;
    }
}
