namespace BakeInsights;

/// <summary>How the virtual kitchen's journal is kept. Shares are our own choice.</summary>
public sealed record JournalHabits
{
    /// <summary>A journal in which nothing is missing and every rise is timed to the moment.</summary>
    public static JournalHabits Complete { get; } =
        new() { ShareLookedAt = 0, ShareForgotten = 0, ShareLoavesForgotten = 0 };

    /// <summary>The share of doughs that are looked at now and then; the others are watched.</summary>
    public double ShareLookedAt { get; init; } = 0.35;

    /// <summary>Minutes between looks.</summary>
    public double LookEveryMin { get; init; } = LookSpacing.UsualMin;

    /// <summary>The share of proofs that are looked at now and then; they end at a look, so mostly a little late.</summary>
    public double ShareProofLookedAt { get; init; }

    /// <summary>Minutes between looks at a proof.</summary>
    public double ProofLookEveryMin { get; init; } = 5;

    /// <summary>Minutes after which a first rise is stopped, ready or not; null where people wait.</summary>
    public double? StopAfterMin { get; init; }

    /// <summary>The share of bakes whose dough temperature was not written down; likewise rise, water and room temperature.</summary>
    public double ShareForgotten { get; init; } = 0.04;

    /// <summary>The share of loaves that nobody weighed and measured.</summary>
    public double ShareLoavesForgotten { get; init; } = 0.02;

    /// <summary>The share of bakes forgotten in the oven for a quarter of an hour.</summary>
    public double ShareOverbaked { get; init; }

    /// <summary>The share of bakes whose flour was measured by the cup.</summary>
    public double ShareByCup { get; init; }

    /// <summary>How cups are filled; the weight of a cup and its spread are the published ones.</summary>
    public FlourMeasure Filling { get; init; } = FlourMeasure.Spooned;

    /// <summary>
    /// The part, 0 to 1, of the variance which all cups of a bake share that goes with the baker's hand and comes back
    /// with it; the rest is each bake's own.
    /// </summary>
    public double CupHandShare { get; init; }

    /// <summary>How many cups of flour each baker fills and weighs for <c>cups.csv</c>.</summary>
    public int CupsWeighed { get; init; }
}
