namespace BakeInsights.Tests;

/// <summary>One dough as a test describes it; what is null is not logged. Percentages are of 1,000 g of flour.</summary>
internal sealed record Dough
{
    public double? Celsius { get; init; }

    public double? HydrationPct { get; init; }

    public double? YeastPct { get; init; }

    public double? SaltPct { get; init; }

    public double? SugarPct { get; init; }

    public double? RiseMin { get; init; }

    public double? NotReadyMin { get; init; }

    public double? ColdMin { get; init; }

    public bool Stopped { get; init; }

    public double? SpecificVolume { get; init; }

    public string? Group { get; init; }

    public double? ProofMin { get; init; }

    public string FlourMeasure { get; init; } = "weighed";

    /// <summary>
    /// Doughs whose settings all change, each in its own rhythm. Their rise times and volumes follow the trade's slopes
    /// and a volume that peaks at 70 %, but for a little that no setting explains.
    /// </summary>
    public static Dough Varied(int index)
    {
        var celsius = 20 + (0.8 * (index * 7 % 11));
        double hydration = 60 + (index * 5 % 13);
        var yeast = 0.6 + (0.1 * (index * 3 % 8));
        var salt = 1.6 + (0.1 * (index * 11 % 9));
        var unexplained = 0.02 * ((index * 13 % 7) - 3);
        return new Dough
        {
            Celsius = celsius,
            HydrationPct = hydration,
            YeastPct = yeast,
            SaltPct = salt,
            RiseMin = 88 * Math.Exp(
                (-0.0953 * (celsius - 24)) - (0.01 * (hydration - 65)) - (0.8 * Math.Log(yeast)) + (0.07 * salt) + unexplained),
            SpecificVolume = 4.2 - (0.006 * (hydration - 70) * (hydration - 70)) - (0.012 * (celsius - 25) * (celsius - 25)) + unexplained,
        };
    }

    /// <summary>A journal of such doughs, each changed by the test.</summary>
    public static IReadOnlyList<Bake> Bakes(int count, Func<Dough, int, Dough> change) =>
        [.. Enumerable.Range(0, count).Select(index => change(Varied(index), index).Bake(index))];

    private Bake Bake(int index)
    {
        const double flour = 1_000;
        const double loaf = 800;
        var draft = new BakeDraft($"B{index + 1}", new DateOnly(2026, 10, 1).AddDays(index));
        draft.Set(BakeColumns.Flour, flour).Set(BakeColumns.FlourMeasure, FlourMeasure).Set(BakeColumns.YeastKind, "instant");
        Set(BakeColumns.Water, HydrationPct * flour / 100);
        Set(BakeColumns.Salt, SaltPct * flour / 100);
        Set(BakeColumns.Yeast, YeastPct * flour / 100);
        Set(BakeColumns.Sugar, SugarPct * flour / 100);
        Set(BakeColumns.DoughTemp, Celsius);
        Set(BakeColumns.Rise, RiseMin);
        Set(BakeColumns.RiseNotReady, NotReadyMin);
        Set(BakeColumns.Cold, ColdMin);
        Set(BakeColumns.Loaf, loaf);
        Set(BakeColumns.LoafVolume, SpecificVolume * loaf);
        Set(BakeColumns.Proof, ProofMin);
        if (Group is not null)
        {
            draft.Set(BakeColumns.Group, Group);
        }

        if (Stopped)
        {
            draft.Set(BakeColumns.RiseOutcome, "stopped");
        }

        return draft.Finish(new SourceLine("bakes.csv", index + 2));

        void Set(QuantityColumn column, double? value)
        {
            if (value is { } number)
            {
                draft.Set(column, number);
            }
        }
    }
}
