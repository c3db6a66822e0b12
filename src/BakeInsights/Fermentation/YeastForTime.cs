namespace BakeInsights;

/// <summary>How much yeast makes a dough rise in another time.</summary>
public static class YeastForTime
{
    /// <summary>
    /// The trade's rule: half the time takes twice the yeast. Yeast multiplies in the dough when there is little of it
    /// and much time (0.5 % grew by 88 % in six hours at 27 °C, 2 % by 29 %; "Fermentation lab reports - dough", after
    /// Pyler), so the rule asks for too much in long rises and holds for changes up to about two times.
    /// </summary>
    public const double TradeExponent = 1;

    /// <summary>The yeast that makes the dough rise in a new time, in the unit of <paramref name="yeast"/>.</summary>
    /// <param name="yeast">Yeast used so far: grams, percent or teaspoons.</param>
    /// <param name="minutes">The rise so far.</param>
    /// <param name="newMinutes">The rise wanted.</param>
    /// <param name="exponent">
    /// Time goes with yeast to the power of minus this, more than 0: the trade's 1, or what a regression of one's own
    /// journal gives, usually 0.6 to 1 (judgement).
    /// </param>
    public static double Yeast(double yeast, double minutes, double newMinutes, double exponent = TradeExponent)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(yeast);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(minutes);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(newMinutes);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(exponent);
        return yeast * Math.Pow(minutes / newMinutes, 1 / exponent);
    }
}
