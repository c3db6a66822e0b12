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

    /// <summary>The effect with its unit and sign, for a table.</summary>
    public static string Effect(Finding finding, Figures figures) =>
        $"{Signed(Difference(finding, finding.Effect.Value, figures))} {UnitOf(finding, figures)}".TrimEnd();

    /// <summary>The interval with its signs.</summary>
    public static string Interval(Finding finding, Figures figures) =>
        Ends(finding.Effect, 1, value => Signed(Difference(finding, value, figures)));

    /// <summary>A p value.</summary>
    public static string Probability(double p) => p < 0.001 ? "below 0.001" : Figures.Rounded(p, 3);

    /// <summary>A strength in words.</summary>
    public static string Of(Strength strength) => strength switch
    {
        Strength.Open => "the journal can't tell",
        Strength.Hint => "a hint",
        Strength.BorneOut => "borne out",
        Strength.Firm => "firmly borne out",
        _ => throw new ArgumentOutOfRangeException(nameof(strength), strength, "No such strength."),
    };

    /// <summary>An effect with its unit, sign and interval: "−18.1 min (−20.9 to −15.4)".</summary>
    public static string Change(Measure result, Estimate effect, Figures figures)
    {
        var unit = figures.UnitOf(result.Dimension);
        var label = result.Dimension == Dimension.Percent ? "points" : unit.Label;
        return $"{DifferenceWords.Bare(effect, unit)} {label}".TrimEnd() + $" ({DifferenceWords.Interval(effect, unit)})";
    }

    /// <summary>What is compared, as a heading: "Dough temperature 2.0 °C more".</summary>
    public static string Compared(Contrast contrast, Figures figures)
    {
        if (contrast.Cause is not { } cause)
        {
            return Figures.Sentence(contrast.Words);
        }

        var change = contrast.IsFactor
            ? $"times {Figures.Significant(contrast.Change)}"
            : $"{figures.BareDifference(cause.Dimension, Math.Abs(contrast.Change))} {figures.UnitOf(cause.Dimension).Label}".TrimEnd()
                + (contrast.Change < 0 ? " less" : " more");
        return $"{cause.Title} {change}";
    }

    // A friction factor is a difference already: it is higher, not warmer.
    private static (string More, string Less) Sides(Measure result) => result.Dimension switch
    {
        Dimension.Duration => ("longer", "shorter"),
        Dimension.Temperature when result.Name != FrictionByBake.FrictionFactor.Name => ("warmer", "colder"),
        _ => ("higher", "lower"),
    };

    // A difference of percentages is in points: a percent of it would be another thing.
    private static string UnitOf(Finding finding, Figures figures) => finding.Result.Dimension == Dimension.Percent
        ? "points"
        : figures.UnitOf(finding.Result.Dimension).Label;

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
