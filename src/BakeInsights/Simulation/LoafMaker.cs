using C = BakeInsights.BakeColumns;

namespace BakeInsights;

/// <summary>What a dough is when it goes to the oven.</summary>
internal readonly record struct ProofedDough(double SpecificVolume, double HydrationPct, double LogProof, double LogRise);

/// <summary>Divides the dough of a virtual kitchen, bakes the pieces, and weighs and measures the loaves.</summary>
internal sealed class LoafMaker(VirtualKitchen kitchen, int seed)
{
    // Dough that does not rise bakes to no less than this, in mL/g: below it a loaf can't be (UsualRanges).
    private const double DensestMlPerG = 1;

    // The house judge's crumb score, one to five about the middle, as in the demo month. Our own choice.
    private const double CrumbPerVolume = 2.2;
    private const double CrumbSd = 0.7;

    private const double OverbakedMin = 15;

    // Small crusty loaves lose up to a quarter (common practice, no source).
    private const double SmallestShare = 0.75;

    private readonly Draws _draws = new(seed, Draws.Purpose.Loaves);

    /// <summary>Bakes the loaves of a dough, and writes them down.</summary>
    public void Bake(RowValues row, int index, double mixedG, ProofedDough dough, List<MadeLoaf>? loaves)
    {
        _draws.Restart(seed, Draws.Purpose.Loaves, index);
        var tools = kitchen.Instruments;
        var oven = kitchen.Oven;
        var middle = (oven.BakeMin.Low + oven.BakeMin.High) / 2;
        var minutes = tools.Written(_draws.In(oven.BakeMin), 1);
        minutes += _draws.Happens(kitchen.Habits.ShareOverbaked) ? OverbakedMin : 0;
        var grams = mixedG * (1 - kitchen.Practice.HandlingLoss);
        var count = Math.Max(1, (int)Math.Round(grams / oven.PieceG));
        BakeMaker.Set(row, C.OvenTemp, tools.Written(_draws.In(oven.OvenC), 5));
        BakeMaker.Set(row, C.Baking, minutes);
        BakeMaker.Set(row, C.Dough, tools.Written(grams, 1));
        BakeMaker.Set(row, C.LoafCount, count);
        row.Choices[C.Steam.Index] = 0;
        var crumb = 3 + (CrumbPerVolume * (dough.SpecificVolume - kitchen.Truth.VolumeAtCentre)) + (CrumbSd * _draws.Normal());
        BakeMaker.Set(row, C.CrumbScore, Math.Clamp(Math.Round(crumb), 1, 5));

        var (mass, volume, measured) = (0.0, 0.0, 0);
        for (var place = 0; place < count; place++)
        {
            var piece = (grams / count) + (tools.PieceSdG * _draws.Normal());
            var share = 1 - (oven.LossPerMinute * (minutes - middle)) + (oven.LossSd * _draws.Normal());
            var specific = Math.Max(DensestMlPerG, dough.SpecificVolume + (oven.LoafSd * _draws.Normal()));
            var loafG = LoafOf(piece) * share;
            var volumeMl = loafG * specific * (1 + (tools.SeedRelativeSd * _draws.Normal()));
            var (writtenG, writtenMl) = (tools.Written(loafG, 1), tools.Written(volumeMl, 10));
            var isForgotten = _draws.Happens(kitchen.Habits.ShareLoavesForgotten);
            if (!isForgotten)
            {
                (mass, volume, measured) = (mass + writtenG, volume + writtenMl, measured + 1);
            }

            loaves?.Add(new MadeLoaf(
                new Loaf(
                    row.Texts[C.Id.Index]!,
                    KitchenRun.LoafName(place),
                    tools.Written(piece, 1),
                    isForgotten ? null : writtenG,
                    isForgotten ? null : writtenMl,
                    null,
                    new SourceLine("loaves.csv", loaves.Count + 2),
                    KitchenRun.NoColumns),
                specific,
                dough.HydrationPct,
                dough.LogProof,
                dough.LogRise));
        }

        if (measured > 0)
        {
            BakeMaker.Set(row, C.Loaf, tools.Written(mass / measured, 0.1));
            BakeMaker.Set(row, C.LoafVolume, tools.Written(volume / measured, 1));
        }
    }

    // The regression of a bakery on pieces of 650 to 1000 g, read backwards. It would leave nothing of a piece of 50 g.
    private static double LoafOf(double pieceG)
    {
        var slope = Loaves.PieceForByRegression(1) - Loaves.PieceForByRegression(0);
        var loaf = (pieceG - Loaves.PieceForByRegression(0)) / slope;
        return Math.Max(loaf, SmallestShare * pieceG);
    }
}
