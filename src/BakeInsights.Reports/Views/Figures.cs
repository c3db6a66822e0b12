using System.Globalization;

namespace BakeInsights.Reports;

/// <summary>Numbers as people read them: in their unit system, rounded, the same in every culture.</summary>
internal sealed class Figures(UnitSystem units)
{
    /// <summary>The display unit of a dimension.</summary>
    public DisplayUnit UnitOf(Dimension dimension) => DisplayUnit.For(dimension, units);

    /// <summary>A title with its unit: "Dough temperature (°C)".</summary>
    public string TitleOf(Measure measure) => TitleOf(measure.Title, measure.Dimension);

    /// <summary>A title with its unit.</summary>
    public string TitleOf(string title, Dimension dimension) =>
        UnitOf(dimension).Label is { Length: > 0 } label ? $"{title} ({label})" : title;

    /// <summary>A value without its unit, for a table whose heading names it; a dash when it is missing.</summary>
    public string Bare(Dimension dimension, double? canonical)
    {
        var unit = UnitOf(dimension);
        return canonical is { } value ? Rounded(unit.Value(value), unit.Decimals) : "–";
    }

    /// <summary>A difference or spread without its unit.</summary>
    public string BareDifference(Dimension dimension, double canonical)
    {
        var unit = UnitOf(dimension);
        return Rounded(unit.Difference(canonical), unit.Decimals);
    }

    /// <summary>A value with its unit: "24.0 °C".</summary>
    public string WithUnit(Dimension dimension, double canonical) =>
        $"{Bare(dimension, canonical)} {UnitOf(dimension).Label}".TrimEnd();

    /// <summary>Two ends: "2.1 to 2.9", or "2.1 to 2.9 %" with a unit; an end that isn't there is said.</summary>
    public static string Range(double? low, double? high, int decimals, string unit = "")
    {
        var behind = unit.Length > 0 ? " " + unit : "";
        return (low, high) switch
        {
            ({ } from, { } to) => $"{Rounded(from, decimals)} to {Rounded(to, decimals)}{behind}",
            ({ } from, null) => $"{Rounded(from, decimals)}{behind} or more",
            (null, { } to) => $"{Rounded(to, decimals)}{behind} or less",
            (null, null) => "no bounds",
        };
    }

    /// <summary>A number with this many decimals, a true minus sign, and no minus zero.</summary>
    public static string Rounded(double value, int decimals)
    {
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero) + 0.0;
        return rounded.ToString("F" + decimals, CultureInfo.InvariantCulture).Replace('-', '−');
    }

    /// <summary>A number of this many significant digits, for coefficients of any size.</summary>
    public static string Significant(double value, int digits = 3)
    {
        var decimals = value == 0 ? 0 : Math.Clamp(digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 10);
        return Rounded(value, decimals);
    }

    /// <summary>The words with a capital letter in front.</summary>
    public static string Sentence(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    /// <summary>A p value.</summary>
    public static string Probability(double p) => p < 0.0001 ? "below 0.0001" : Figures.Rounded(p, p < 0.1 ? 4 : 2);

    /// <summary>A p value as how many of a number of times: "1 of 43", "27 of 100".</summary>
    public static string Chance(double p)
    {
        const double rare = 0.0001;
        const double often = 0.1;
        return p < rare ? $"fewer than 1 of {Thousands(1 / rare)}"
            : p < often ? $"1 of {Thousands(RoundedTo(1 / p, 2))}"
            : $"{Rounded(100 * p, 0)} of 100";
    }

    /// <summary>A number with no more decimals than it needs, two at most: a score, or a step.</summary>
    public static string Shortest(double value)
    {
        const int most = 2;
        var rounded = Math.Round(value, most, MidpointRounding.AwayFromZero);
        var decimals = Enumerable.Range(0, most).FirstOrDefault(places => Math.Round(rounded, places) == rounded, most);
        return Rounded(value, decimals);
    }

    private static string Thousands(double value) => value.ToString("#,0", CultureInfo.InvariantCulture);

    private static double RoundedTo(double value, int digits)
    {
        var step = Math.Pow(10, Math.Max(0, Math.Floor(Math.Log10(value)) - digits + 1));
        return Math.Round(value / step) * step;
    }
}
