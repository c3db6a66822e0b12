namespace BakeInsights;

/// <summary>One baker of the virtual kitchen, as a seed drew them.</summary>
/// <param name="Baker">The baker.</param>
/// <param name="Bench">The bench; null where there is one.</param>
/// <param name="Rise">What baker and bench add to ln(rise minutes).</param>
/// <param name="Volume">What they add to specific volume, in mL/g.</param>
/// <param name="Proof">What the baker adds to ln(proof given / needed).</param>
/// <param name="Cup">How far the baker's cups of flour lie off, as a share.</param>
internal sealed record KitchenHand(string Baker, string? Bench, double Rise, double Volume, double Proof, double Cup)
{
    /// <summary>The bakers of a seed.</summary>
    public static KitchenHand[] Of(VirtualKitchen kitchen, int seed)
    {
        var hands = kitchen.Hands;
        var draws = new Draws(seed, Draws.Purpose.Hands);
        var benches = hands.Benches.IsDefaultOrEmpty ? 1 : hands.Benches.Length;
        var benchRise = new double[benches];
        var benchVolume = new double[benches];
        for (var bench = 0; bench < benches && !hands.Benches.IsDefaultOrEmpty; bench++)
        {
            benchRise[bench] = hands.BenchRiseSd * draws.Normal();
            benchVolume[bench] = hands.BenchVolumeSd * draws.Normal();
        }

        var cupSd = CupHandSd(kitchen.Habits);
        var made = new KitchenHand[hands.Bakers.Length];
        for (var i = 0; i < made.Length; i++)
        {
            var bench = i % benches;
            made[i] = new(
                hands.Bakers[i],
                hands.Benches.IsDefaultOrEmpty ? null : hands.Benches[bench],
                benchRise[bench] + (hands.BakerRiseSd * draws.Normal()),
                benchVolume[bench] + (hands.BakerVolumeSd * draws.Normal()),
                hands.BakerProofSd * draws.Normal(),
                cupSd * draws.Normal());
        }

        return made;
    }

    private static double CupHandSd(JournalHabits habits) =>
        (HouseholdWeights.OfFlour(habits.Filling)?.Spread?.SharedRelativeSd ?? 0) * Math.Sqrt(habits.CupHandShare);
}
