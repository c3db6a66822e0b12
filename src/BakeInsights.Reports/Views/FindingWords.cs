namespace BakeInsights.Reports;

/// <summary>Findings in sentences and cells, made of their numbers.</summary>
internal static class FindingWords
{
    private const int MostDecimals = 4;

    /// <summary>"Specific volume was 0.21 mL/g higher …": effect, interval, bakes, strength.</summary>
    public static string Sentence(Finding finding, Figures figures)
    {
        var effect = finding.Effect;
        var (more, less) = Sides(finding.Result);
        var isMore = effect.Value >= 0;
        var sign = isMore ? 1 : -1;
        var percent = finding.EffectPct is { } share
            ? $", which is {Figures.Rounded(sign * share.Value, 1)} % ({Ends(share, sign, value => Figures.Rounded(value, 1))})"
            : "";
        return $"{Compared(finding.Contrast, figures)}: {finding.Result.Words} "
            + $"{Difference(finding, sign * effect.Value, figures)} {UnitOf(finding, figures)}".TrimEnd()
            + $" {(isMore ? more : less)} (95 % interval {Ends(effect, sign, value => Difference(finding, value, figures))}){percent}. "
            + $"{JournalView.Count(finding.Bakes.Count, "bake")}; {Of(finding.Strength)}.";
    }

    /// <summary>The question, with what is compared where that isn't a step of a cause.</summary>
    public static string Asked(Finding finding) =>
        finding.Contrast.Cause is null ? $"{finding.Question} ({Figures.Sentence(finding.Contrast.Words)}.)" : finding.Question;

    /// <summary>The effect with its unit and sign, for a table.</summary>
    public static string Effect(Finding finding, Figures figures) =>
        $"{Signed(Difference(finding, finding.Effect.Value, figures))} {UnitOf(finding, figures)}".TrimEnd();

    /// <summary>The interval with its signs.</summary>
    public static string Interval(Finding finding, Figures figures) =>
        Ends(finding.Effect, 1, value => Signed(Difference(finding, value, figures)));

    /// <summary>A strength in words.</summary>
    public static string Of(Strength strength) => strength switch
    {
        Strength.Open => "the journal can't tell",
        Strength.Hint => "a hint",
        Strength.BorneOut => "borne out",
        Strength.Firm => "firmly borne out",
        _ => throw new ArgumentOutOfRangeException(nameof(strength), strength, "No such strength."),
    };

    private static string Compared(Contrast contrast, Figures figures)
    {
        if (contrast.Cause is not { } cause)
        {
            return Figures.Sentence(contrast.Words);
        }

        if (contrast.IsFactor)
        {
            // More of it as instant yeast is as much more of any.
            return Figures.Sentence($"{Factor(contrast.Change)} {cause.Words.Split(" (")[0]}");
        }

        var unit = figures.UnitOf(cause.Dimension);
        var size = $"{Figures.Shortest(unit.Difference(Math.Abs(contrast.Change)))} {LabelOf(cause.Dimension, unit)}".TrimEnd();
        var (more, less) = cause.Dimension == Dimension.Duration ? ("longer", "shorter") : ("higher", "lower");
        return $"{cause.Title} {size} {(contrast.Change < 0 ? less : more)}";
    }

    private static string Factor(double factor) => factor switch
    {
        1.25 => "a quarter more",
        >= 1 => $"{Figures.Rounded(100 * (factor - 1), 0)} % more",
        _ => $"{Figures.Rounded(100 * (1 - factor), 0)} % less",
    };

    // A friction factor is a difference already: it is higher, not warmer.
    private static (string More, string Less) Sides(Measure result) => result.Dimension switch
    {
        Dimension.Duration => ("longer", "shorter"),
        Dimension.Temperature when result.Name != FrictionByBake.FrictionFactor.Name => ("warmer", "colder"),
        _ => ("higher", "lower"),
    };

    private static string UnitOf(Finding finding, Figures figures) => LabelOf(finding.Result.Dimension, figures.UnitOf(finding.Result.Dimension));

    // A difference of percentages is in points: a percent of it would be another thing.
    private static string LabelOf(Dimension dimension, DisplayUnit unit) => dimension == Dimension.Percent ? "points" : unit.Label;

    // To two digits of the interval's half width, and no finer than a tenth of what the unit is usually read to.
    private static string Difference(Finding finding, double canonical, Figures figures)
    {
        var unit = figures.UnitOf(finding.Result.Dimension);
        var half = finding.Effect is { Low: { } low, High: { } high } ? unit.Difference(high - low) / 2 : 0;
        var needed = half > 0 ? Math.Clamp(1 - (int)Math.Floor(Math.Log10(half)), 0, MostDecimals) : unit.Decimals;
        return Figures.Rounded(unit.Difference(canonical), Math.Min(needed, unit.Decimals + 1));
    }

    private static string Ends(Estimate estimate, int sign, Func<double, string> text)
    {
        var (low, high) = sign > 0 ? (estimate.Low, estimate.High) : (-estimate.High, -estimate.Low);
        return $"{(low is { } from ? text(from) : "no lower bound")} to {(high is { } to ? text(to) : "no upper bound")}";
    }

    private static string Signed(string number) =>
        number[0] == '−' || number.All(letter => letter is '0' or '.') ? number : "+" + number;
}
