namespace BakeInsights;

/// <summary>
/// An invented kitchen whose doughs follow a known truth, from the temperature of the tap to the judges' scores: for
/// teaching, and for asking how often an answer is right. Same seed, same settings: same bakes, to the last digit.
/// </summary>
/// <remarks>
/// Every effect is a named value of one of the records here, with its source or the words "our own choice". Change them
/// with <c>with</c>: <c>kitchen with { Truth = kitchen.Truth with { RiseDoughTemperature = -0.05 } }</c>. What is logged
/// and what is so are kept apart: doughs follow what was really in the bowl and how warm it really was.
/// </remarks>
public sealed record VirtualKitchen
{
    /// <summary>Bakes of a month where no number is given: a busy kitchen's, common practice.</summary>
    public const int UsualBakes = 40;

    private const int DaysOfShortestMonth = 28;

    /// <summary>A kitchen as it may be met: it looks at intervals, forgets cells, and its probe and bakers scatter.</summary>
    public static VirtualKitchen Usual { get; } = new();

    /// <summary>The usual kitchen in which no cause moves anything: the same spreads, all else chance.</summary>
    public static VirtualKitchen NothingMatters { get; } = Usual.WithoutEffects();

    /// <summary>How its doughs behave.</summary>
    public KitchenTruth Truth { get; init; } = new() { RiseSugar = UsualSugarSlope };

    /// <summary>
    /// How fast a dough rises by its temperature, in place of the truth's straight line; null for that. Only ratios to 24
    /// °C count.
    /// </summary>
    public TemperatureResponse? Response { get; init; }

    /// <summary>Room and tap.</summary>
    public KitchenClimate Climate { get; init; } = new();

    /// <summary>How doughs are set.</summary>
    public DoughPractice Practice { get; init; } = new();

    /// <summary>Proof and oven.</summary>
    public ProofAndOven Oven { get; init; } = new();

    /// <summary>Bakers and benches.</summary>
    public KitchenHands Hands { get; init; } = new();

    /// <summary>Judges.</summary>
    public TastingPanel Panel { get; init; } = new();

    /// <summary>Probe, scales and seeds.</summary>
    public KitchenInstruments Instruments { get; init; } = new();

    /// <summary>How the journal is kept.</summary>
    public JournalHabits Habits { get; init; } = new();

    /// <summary>The first day of the first month.</summary>
    public DateOnly FirstDay { get; init; } = new(2026, 10, 1);

    /// <summary>What the names of bakes begin with.</summary>
    public string IdPrefix { get; init; } = "VK-";

    // Above 5 % sugar a point lengthens the rise by 0 to 5 % (judgement on yeast suppliers' notes); within that, our own choice.
    private const double UsualSugarSlope = 0.02;

    /// <summary>
    /// The truth of the rise-time terms by their names. With a <see cref="Response"/>, that of dough temperature is the
    /// slope at 24 °C: no straight line is the whole truth then.
    /// </summary>
    public IReadOnlyDictionary<string, double> RiseTimeTruth => Response is null
        ? Truth.RiseTime
        : new Dictionary<string, double>(Truth.RiseTime) { [RiseTime.DoughTemperatureTerm] = WarmthOf(0.5) - WarmthOf(-0.5) };

    /// <summary>The truth of the loaf-volume terms by their names, for doughs proofed to the moment.</summary>
    public IReadOnlyDictionary<string, double> LoafVolumeTruth => Truth.LoafVolume;

    /// <summary>
    /// A kitchen that shows the trade's effects through so much chance, with alike bakers who miss nothing and exact
    /// readings, but for the chance itself.
    /// </summary>
    /// <param name="residualShare">
    /// Standard deviation of a rise time, and of a specific volume, as a share of it: 0.05 in a laboratory, 0.10 to 0.15
    /// in a kitchen, 0.21 in one class (Lawson's bread dough). More than 0.
    /// </param>
    /// <param name="doughTemperatureSdC">Natural spread of dough temperatures in °C, not negative.</param>
    public static VirtualKitchen TradeEffects(double residualShare, double doughTemperatureSdC = 1.8)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(residualShare);
        ArgumentOutOfRangeException.ThrowIfNegative(doughTemperatureSdC);
        return Usual.Exactly() with
        {
            Truth = Usual.Truth with
            {
                RiseResidualSd = residualShare,
                VolumeResidualSd = residualShare * Usual.Truth.VolumeAtCentre,
            },
            Practice = Usual.Practice with { DoughTemperatureSdC = doughTemperatureSdC },
        };
    }

    /// <summary>
    /// This kitchen with exact instruments, a complete journal and alike bakers: what is left is its truth and its chance.
    /// Flour by the cup stays by the cup.
    /// </summary>
    public VirtualKitchen Exactly() => this with
    {
        Instruments = KitchenInstruments.Exact,
        Habits = JournalHabits.Complete with
        {
            ShareByCup = Habits.ShareByCup,
            Filling = Habits.Filling,
            CupHandShare = Habits.CupHandShare,
            CupsWeighed = Habits.CupsWeighed,
        },
        Hands = KitchenHands.Alike with { Bakers = Hands.Bakers, Benches = Hands.Benches },
    };

    /// <summary>
    /// This kitchen with every effect taken out: temperature, formula, baker, bench, proof and minutes in the oven move
    /// nothing, and judges see the loaf's volume only. Settings, chance, instruments and habits keep their spreads.
    /// </summary>
    public VirtualKitchen WithoutEffects() => this with
    {
        Truth = Truth.WithoutEffects(),
        Response = null,
        Oven = Oven with { ProofPower = 0, VolumeProofSquared = 0, LossPerMinute = 0 },
        Hands = Hands with { BakerRiseSd = 0, BakerVolumeSd = 0, BenchRiseSd = 0, BenchVolumeSd = 0, BakerProofSd = 0 },
        Panel = Panel with { OpennessPerHydration = 0, OpennessPerLogProof = 0, FlavourPerLogRise = 0 },
    };

    /// <summary>This kitchen with all flour by the cup, filled in a way.</summary>
    /// <param name="filling">The way; not <see cref="FlourMeasure.Weighed"/>.</param>
    public VirtualKitchen ByCup(FlourMeasure filling) => filling == FlourMeasure.Weighed
        ? throw new ArgumentException("Flour by the cup is not weighed.", nameof(filling))
        : this with { Habits = Habits with { ShareByCup = 1, Filling = filling } };

    /// <summary>So many bakes, spread over the days of the first month; nothing beside them is made.</summary>
    public IReadOnlyList<Bake> Bakes(int seed, int count) => KitchenRun.Bakes(this, seed, 1, count, null);

    /// <summary>A month as a journal, with its loaves and, as far as there are judges and weighed cups, scores and cups.</summary>
    public Journal Month(int seed, int bakes = UsualBakes) => Months(seed, 1, bakes);

    /// <summary>Months on end as one journal; bakers, benches and judges stay.</summary>
    /// <param name="seed">The seed.</param>
    /// <param name="months">How many, at least one.</param>
    /// <param name="bakesPerMonth">Bakes in each, not negative.</param>
    public Journal Months(int seed, int months, int bakesPerMonth) => KitchenRun.Journal(this, seed, months, bakesPerMonth);

    /// <summary>The day of a bake: evenly over four weeks, which every month has.</summary>
    internal DateOnly DayOf(int month, int place, int bakesPerMonth) =>
        FirstDay.AddMonths(month).AddDays(place * DaysOfShortestMonth / bakesPerMonth);

    /// <summary>What a dough's warmth above 24 °C makes of ln(minutes).</summary>
    internal double WarmthOf(double warmth) => Response is null
        ? Truth.RiseDoughTemperature * warmth
        : Math.Log(RateAt(0) / RateAt(warmth));

    // A dough that does not rise at all would make no journal; this slow, its rise is stopped at the column's end.
    private double RateAt(double warmth) => Math.Max(
        1e-6, Response!.Rate(Temperature.FromC(ModelAnswer.CentreTemperatureC + warmth)));
}
