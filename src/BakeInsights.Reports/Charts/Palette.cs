namespace BakeInsights.Reports;

/// <summary>Colours that people of every kind of colour vision can tell apart.</summary>
/// <remarks>
/// Chosen from the set of Okabe and Ito (2008), "Color Universal Design: how to make figures and presentations that
/// are friendly to colorblind people". Series differ in the marker's shape as well, for print in grey.
/// </remarks>
internal static class Palette
{
    /// <summary>Series in order: colour and marker.</summary>
    public static IReadOnlyList<(string Colour, string Marker)> Series { get; } =
    [
        ("#0072B2", "circle"),
        ("#009E73", "diamond"),
        ("#D55E00", "square"),
    ];

    /// <summary>The band that one more bake falls in: light, with a dotted edge.</summary>
    public static (string Colour, double Opacity, string Edge) OneMore { get; } = (Series[0].Colour, 0.1, "dot");

    /// <summary>The band of a mean: dark, with a solid edge.</summary>
    public static (string Colour, double Opacity, string Edge) Mean { get; } = (Series[0].Colour, 0.35, "solid");

    /// <summary>What the band of one more bake is called.</summary>
    public const string OneMoreName = "one more bake (95 %), dotted edge";

    /// <summary>What the band of a mean is called.</summary>
    public const string MeanName = "mean of many (95 %), solid edge";

    /// <summary>Axes' words and reference lines.</summary>
    public const string Ink = "#333333";

    /// <summary>Lines of the grid.</summary>
    public const string Grid = "#E3E3E3";

    /// <summary>A colour let through in part: 0 is glass, 1 is paint.</summary>
    public static string Sheer(string colour, double opacity)
    {
        var parts = Convert.FromHexString(colour.AsSpan(1));
        return FormattableString.Invariant($"rgba({parts[0]},{parts[1]},{parts[2]},{opacity})");
    }
}
