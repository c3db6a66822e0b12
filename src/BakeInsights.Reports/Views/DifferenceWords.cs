namespace BakeInsights.Reports;

/// <summary>Differences and levels in the reader's unit, for answers about columns and groups.</summary>
internal static class DifferenceWords
{
    // A difference is often smaller than what an instrument shows of the whole.
    private const int Digits = 2;

    /// <summary>A difference with its unit and interval: "0.31 mL/g more (95 % interval: 0.05 to 0.57)".</summary>
    public static string Signed(Estimate effect, Dimension dimension, Figures figures, string more, string less)
    {
        var sign = effect.Value < 0 ? -1 : 1;
        var unit = figures.UnitOf(dimension);
        var decimals = DecimalsOf(effect, unit);
        var (low, high) = sign > 0 ? (effect.Low, effect.High) : (-effect.High, -effect.Low);
        var value = $"{Figures.Rounded(sign * unit.Difference(effect.Value), decimals)} {unit.Label}".TrimEnd();
        return $"{value} {(sign > 0 ? more : less)} (95 % interval: {Range(low, high, unit, decimals)})";
    }

    /// <summary>An interval of a difference, without its unit.</summary>
    public static string Interval(Estimate effect, DisplayUnit unit) => Range(effect.Low, effect.High, unit, DecimalsOf(effect, unit));

    /// <summary>A difference without its unit, with its sign.</summary>
    public static string Bare(Estimate effect, DisplayUnit unit)
    {
        var text = Figures.Rounded(unit.Difference(effect.Value), DecimalsOf(effect, unit));
        return effect.Value > 0 && text.AsSpan().IndexOfAnyInRange('1', '9') >= 0 ? "+" + text : text;
    }

    /// <summary>A level as a reader has it: a number in the reader's unit, or the journal's text.</summary>
    public static string Level(string level, double? number, Dimension dimension, Figures figures) =>
        number is { } value && dimension != Dimension.Number ? figures.WithUnit(dimension, value) : level;

    private static string Range(double? low, double? high, DisplayUnit unit, int decimals) => Figures.Range(
        low is { } from ? unit.Difference(from) : null, high is { } to ? unit.Difference(to) : null, decimals);

    // Enough decimals to see the interval's width.
    private static int DecimalsOf(Estimate effect, DisplayUnit unit)
    {
        var width = Math.Abs(unit.Difference((effect.High ?? effect.Value) - (effect.Low ?? effect.Value)));
        return width > 0 ? Math.Clamp(Digits - 1 - (int)Math.Floor(Math.Log10(width)), 0, 6) : unit.Decimals;
    }
}
