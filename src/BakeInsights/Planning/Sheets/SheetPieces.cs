namespace BakeInsights;

/// <summary>Into what a dough is divided.</summary>
/// <param name="Count">Pieces.</param>
/// <param name="PieceG">Dough in one piece, in grams.</param>
/// <param name="LossPct">The part of the mixed dough that is counted on to stay on bowl, hands and bench, in percent.</param>
public sealed record SheetPieces(int Count, double PieceG, double LossPct)
{
    /// <summary>What is counted on where a journal does not tell, in percent (common practice, no source; up to 5 in trade glossaries).</summary>
    public const double UsualLossPct = 2;

    /// <summary>The dough to mix, in grams.</summary>
    public double DoughG => Loaves.DoughFor(Count, PieceG, LossPct);
}
