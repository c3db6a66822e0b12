namespace BakeInsights;

/// <summary>Proof, oven spring and bake loss of the virtual kitchen.</summary>
public sealed record ProofAndOven
{
    /// <summary>
    /// Minutes of proof that a dough needs at 24 °C and 65 % hydration with 1 % instant yeast and 2 % salt (common
    /// practice: 40 to 45; published optima 41 to 65, Dubois and Vetter 1987).
    /// </summary>
    public double ProofMinutes { get; init; } = 42;

    /// <summary>
    /// What the proof's factor is as a power of the first rise's: pieces come half way to the room meanwhile. Our own choice.
    /// </summary>
    public double ProofPower { get; init; } = 0.5;

    /// <summary>Standard deviation of ln(proof needed) about that. Our own choice.</summary>
    public double ProofResidualSd { get; init; } = 0.06;

    /// <summary>
    /// What specific volume loses with the square of ln(proof given / needed), in mL/g: half or twice the proof costs 1
    /// mL/g. Volume rises and falls with proof time (Freilich 1949, as quoted by Siffring and Bruinsma 1993); the figure
    /// is our own choice.
    /// </summary>
    public double VolumeProofSquared { get; init; } = -2;

    /// <summary>Standard deviation of specific volume between loaves of a bake, in mL/g. Our own choice.</summary>
    public double LoafSd { get; init; } = 0.05;

    /// <summary>The piece that doughs are divided into, about, in g: in the 650 to 1000 g of the loss regression.</summary>
    public double PieceG { get; init; } = 850;

    /// <summary>The oven at loading, in °C (common practice for a hearth loaf: 220 to 240).</summary>
    public KitchenRange OvenC { get; init; } = new(225, 235);

    /// <summary>Minutes in the oven (army cards: 35 to 40).</summary>
    public KitchenRange BakeMin { get; init; } = new(35, 40);

    /// <summary>The part of a loaf's weight that each minute beyond the middle of <see cref="BakeMin"/> takes. Our own choice.</summary>
    public double LossPerMinute { get; init; } = 0.002;

    /// <summary>Standard deviation of a loaf's weight about what piece and minutes make it, as a share. Our own choice.</summary>
    public double LossSd { get; init; } = 0.008;
}
