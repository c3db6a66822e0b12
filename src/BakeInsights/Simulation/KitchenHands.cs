using System.Collections.Immutable;

namespace BakeInsights;

/// <summary>
/// Who bakes in the virtual kitchen and how far they differ. Each seed draws other hands. Names are invented, spreads
/// our own choice: bakers of different experience get widely different volumes from the same flour (Geddes et al., Can.
/// J. Research, about 1931, from its abstract), without a figure that could be taken over.
/// </summary>
public sealed record KitchenHands
{
    /// <summary>Bakers who do everything alike and hit the proof.</summary>
    public static KitchenHands Alike { get; } =
        new() { BakerRiseSd = 0, BakerVolumeSd = 0, BenchRiseSd = 0, BenchVolumeSd = 0, BakerProofSd = 0, ProofSd = 0 };

    /// <summary>The bakers; the first belongs to the first bench, the second to the second, and so on around.</summary>
    public ImmutableArray<string> Bakers { get; init; } = ["Anselma", "Dov", "Mirre", "Teodor"];

    /// <summary>The benches, written as groups; none where there is one.</summary>
    public ImmutableArray<string> Benches { get; init; } = [];

    /// <summary>Standard deviation between bakers of ln(rise minutes).</summary>
    public double BakerRiseSd { get; init; } = 0.02;

    /// <summary>Standard deviation between bakers of specific volume, in mL/g.</summary>
    public double BakerVolumeSd { get; init; } = 0.05;

    /// <summary>Standard deviation between benches of ln(rise minutes): one stands by the window.</summary>
    public double BenchRiseSd { get; init; } = 0.04;

    /// <summary>Standard deviation between benches of specific volume, in mL/g.</summary>
    public double BenchVolumeSd { get; init; } = 0.08;

    /// <summary>Standard deviation between bakers of ln(proof given / proof needed).</summary>
    public double BakerProofSd { get; init; } = 0.04;

    /// <summary>Standard deviation of the same from bake to bake of one baker.</summary>
    public double ProofSd { get; init; } = 0.06;
}
