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

    /// <summary>The dough to mix, in grams, so that these pieces can be scaled from it.</summary>
    /// <param name="count">Pieces, at least one.</param>
    /// <param name="pieceG">Dough in one piece.</param>
    /// <param name="handlingLossPct">
    /// The part of the mixed dough that stays on bowl, hands and bench, in percent. German trade glossaries put flour
    /// lost to dusting, sticking and fermentation at up to 5 %.
    /// </param>
    public static double DoughFor(int count, double pieceG, double handlingLossPct)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(pieceG);
        return count * BeforeLoss(pieceG, handlingLossPct);
    }

    /// <summary>The dough in one piece, in grams, that makes a cooled loaf of this mass at this bake loss in percent.</summary>
    /// <remarks>
    /// Bake loss is 9.8 to 11.5 % through cooling in pan breads (trade dictionary, "bake-out loss") and 10 to 20 % in
    /// hearth breads; a kitchen's own journal says it best.
    /// </remarks>
    public static double PieceFor(double loafG, double bakeLossPct)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(loafG);
        return BeforeLoss(loafG, bakeLossPct);
    }

    /// <summary>
    /// The dough in one piece, in grams, for a loaf of this mass three hours after baking, from a regression on pieces
    /// of 650 to 1000 g in one bakery: 45.654 + 1.0624 x loaf (Bocevska et al., Kemija u industriji; R-squared 0.99).
    /// </summary>
    public static double PieceForByRegression(double loafG) => 45.654 + (1.0624 * loafG);

    /// <summary>
    /// Volume, in mL, of a laboratory loaf of 100 g flour that its protein leads one to expect: 65 x percent + 140.
    /// Loaves within 25 mL of it count as equal (Western Wheat Quality Laboratory, "Protein Quality"). Not for
    /// kitchen loaves of other sizes.
    /// </summary>
    public static double LaboratoryLoafVolume(double flourProteinPct) => (65 * flourProteinPct) + 140;

    private static double BeforeLoss(double grams, double lossPct)
    {
        if (!(lossPct is >= 0 and < 100))
        {
            throw new ArgumentOutOfRangeException(nameof(lossPct), lossPct, "A loss goes from 0 to less than 100 %.");
        }

        return grams / (1 - (lossPct / 100));
    }
}
