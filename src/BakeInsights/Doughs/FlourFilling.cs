namespace BakeInsights;

/// <summary>How far cups of flour spread when they are filled in a way.</summary>
public static class FlourFilling
{
    /// <summary>
    /// The standard deviation of a cup of flour, in percent of its weight; 0 when it was weighed. Judgements: spooned
    /// and sifted 4 % (5 g of 125); unstated 8 % (10 g of 125), which spans sifted 116 to scooped 137 g; scooped 6 %,
    /// the upper end of the 3 to 6 % between people in home-economics papers of the 1960s, from memory.
    /// </summary>
    public static double SpreadPct(FlourMeasure measure) => measure switch
    {
        FlourMeasure.Weighed => 0,
        FlourMeasure.Spooned or FlourMeasure.Sifted => 4,
        FlourMeasure.Scooped => 6,
        FlourMeasure.CupUnknown => 8,
        _ => throw new ArgumentOutOfRangeException(nameof(measure), measure, "Not a way of measuring flour."),
    };
}
