using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>How evenly doughs were divided: the coefficient of variation of a bake's pieces.</summary>
/// <param name="VariationPct">
/// The root mean square of the bakes' coefficients of variation, each weighted by its pieces less one, in percent, with
/// its 95 % interval (chi-square).
/// </param>
/// <param name="ByBake">The bakes with two pieces or more, in order of their days.</param>
/// <param name="LeftOut">The bakes without.</param>
public sealed record EvennessOfDividing(
    Estimate VariationPct, IReadOnlyList<DividedBake> ByBake, IReadOnlyList<LeftOutBakes> LeftOut)
{
    /// <summary>Looks at the pieces of these bakes.</summary>
    /// <returns>The evenness, or the problem that no bake has two pieces with their mass, or all pieces are the same.</returns>
    public static Attempt<EvennessOfDividing> Of(IReadOnlyList<Bake> bakes, IReadOnlyList<Loaf> loaves)
    {
        ArgumentNullException.ThrowIfNull(bakes);
        ArgumentNullException.ThrowIfNull(loaves);
        var pieces = loaves.ToLookup(loaf => loaf.BakeId, loaf => loaf.PieceG);
        List<DividedBake> divided = [];
        List<Bake> left = [];
        foreach (var bake in bakes)
        {
            double[] grams = [.. pieces[bake.Id].Known()];
            if (grams.Length < 2)
            {
                left.Add(bake);
                continue;
            }

            var moments = SampleMoments.Of(grams);
            divided.Add(new DividedBake(bake, grams.Length, 100 * moments.StandardDeviation!.Value / moments.Mean));
        }

        var degrees = divided.Sum(one => one.Pieces - 1);
        var variation = degrees == 0 ? 0 : Math.Sqrt(divided.Sum(one => (one.Pieces - 1) * one.VariationPct * one.VariationPct) / degrees);
        if (degrees == 0 || variation == 0)
        {
            return new FitProblem(
                degrees == 0 ? FitProblemKind.TooFewRows : FitProblemKind.NoSpread,
                [LoafColumns.Piece.Name],
                degrees == 0
                    ? "No bake of the month has two pieces of dough with their mass in loaves.csv."
                    : "All pieces of a bake have the same mass as they were written down.",
                degrees == 0 ? "Weigh the pieces of a few bakes and write each in loaves.csv." : "Write the masses to the gram.");
        }

        var ends = SpreadInterval.Of(variation, degrees, ModelAnswer.Level);
        return new EvennessOfDividing(
            new Estimate(variation, ends.Low, ends.High),
            divided,
            left.Count == 0 ? [] : [new LeftOutBakes("fewer than two weighed pieces", left)]);
    }
}
