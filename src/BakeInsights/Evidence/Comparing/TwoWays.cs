using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Two formulas, or two ways of working, side by side: what differs, what is alike, and what can't be said.</summary>
public sealed record TwoWays
{
    private static readonly Measure[] Results =
    [
        Measures.RiseTime, Measures.SpecificVolume, Measures.BakeLoss,
        Measures.CrumbScore, ColumnMeasure.Of(BakeColumns.CrustScore.Name, "Crust score"), ColumnMeasure.Of(BakeColumns.FlavourScore.Name, "Flavour score"),
    ];

    private static readonly Measure[] Settings =
        [Measures.DoughTemperature, Measures.RoomTemperature, Measures.Hydration, Measures.Yeast, Measures.Salt, Measures.ProofTime];

    private TwoWays()
    {
    }

    /// <summary>What was asked.</summary>
    public required WaysWish Wish { get; init; }

    /// <summary>The column's name for people.</summary>
    public required string ColumnTitle { get; init; }

    /// <summary>The first way as the journal spells it.</summary>
    public required string First { get; init; }

    /// <summary>The second way as the journal spells it.</summary>
    public required string Second { get; init; }

    /// <summary>Bakes of the first way.</summary>
    public required int FirstCount { get; init; }

    /// <summary>Bakes of the second way.</summary>
    public required int SecondCount { get; init; }

    /// <summary>The results that can be compared.</summary>
    public required IReadOnlyList<ResultCompared> Compared { get; init; }

    /// <summary>Results that the journal has but can't compare.</summary>
    public required IReadOnlyList<ResultNotCompared> NotCompared { get; init; }

    /// <summary>How the two were set, as far as both are logged.</summary>
    public required IReadOnlyList<SettingBeside> SettingsBeside { get; init; }

    /// <summary>What the two can't be told from, one sentence each.</summary>
    public required IReadOnlyList<string> CannotTellApart { get; init; }

    /// <summary>Compares two ways.</summary>
    /// <remarks>
    /// Each result by least squares as <see cref="ColumnQuestion"/> has it: within days where both were baked on every one
    /// of them, and within group, baker and kind of flour where at least two of those baked both. Dough temperature is held
    /// still; so are yeast, hydration, salt and sugar, unless formulas are compared, for those are what a formula is.
    /// </remarks>
    /// <param name="bakes">The journal's bakes.</param>
    /// <param name="wish">The two ways.</param>
    /// <returns>The comparison, or the problem that says which ways the journal has.</returns>
    /// <exception cref="ArgumentException">A name is blank, or the two ways are one.</exception>
    public static Attempt<TwoWays> Compare(IReadOnlyList<Bake> bakes, WaysWish wish)
    {
        ArgumentNullException.ThrowIfNull(bakes);
        ArgumentNullException.ThrowIfNull(wish);
        if (!WaysSplit.Of(bakes, wish).TryGet(out var split, out var problem))
        {
            return problem;
        }

        List<ResultCompared> compared = [];
        List<ResultNotCompared> not = [];
        foreach (var result in Results.Where(result => result.Name != split.Cells.Name && split.Both.Any(bake => result.Of(bake) is not null)))
        {
            WaysResult.Of(split, wish, result).Match<object?>(
                found =>
                {
                    compared.Add(found);
                    return null;
                },
                why =>
                {
                    not.Add(new ResultNotCompared(result, $"{why.Message} {why.Remedy}"));
                    return null;
                });
        }

        if (compared.Count == 0)
        {
            return new FitProblem(
                FitProblemKind.TooFewRows,
                [split.Cells.Name],
                not.Count == 0
                    ? $"No bake of {split.First} or {split.Second} has a rise time, a loaf volume, a bake loss or a score."
                    : $"{split.First} and {split.Second} can't be compared in anything. {not[0].Reason}",
                not.Count == 0 ? "Log what came of each bake." : "");
        }

        var judged = FindingFamily.Judge(compared.Select(one => one.Finding), []).Answers;
        return new TwoWays
        {
            Wish = wish,
            ColumnTitle = split.Cells.Title,
            First = split.First,
            Second = split.Second,
            FirstCount = split.OfFirst.Count,
            SecondCount = split.OfSecond.Count,
            Compared = [.. compared.Zip(judged, (one, finding) => one with { Finding = finding })],
            NotCompared = not,
            SettingsBeside = [.. Settings.Select(setting => Beside(split, setting)).OfType<SettingBeside>()],
            CannotTellApart = [.. WaysRemarks.Of(split, compared)],
        };
    }

    internal static SettingBeside? Beside(WaysSplit split, Measure setting) =>
        MeasureSummary.Of(setting, split.OfFirst) is { } first && MeasureSummary.Of(setting, split.OfSecond) is { } second
            ? new SettingBeside(setting, first, second, first.Most < second.Least || second.Most < first.Least)
            : null;
}
