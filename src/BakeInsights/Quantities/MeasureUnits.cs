using UnitsNet;

namespace BakeInsights;

/// <summary>The units that journals are written in, and the search for one by its text.</summary>
public static class MeasureUnits
{
    /// <summary>Grams.</summary>
    public static MeasureUnit Gram { get; } = new("g", "g", Dimension.Mass, v => v, "gram", "grams", "gr");

    /// <summary>Kilograms.</summary>
    public static MeasureUnit Kilogram { get; } =
        new("kg", "kg", Dimension.Mass, v => Mass.FromKilograms(v).Grams, "kilogram", "kilograms");

    /// <summary>Avoirdupois ounces.</summary>
    public static MeasureUnit Ounce { get; } =
        new("oz", "oz", Dimension.Mass, v => Mass.FromOunces(v).Grams, "ounce", "ounces");

    /// <summary>Avoirdupois pounds.</summary>
    public static MeasureUnit Pound { get; } =
        new("lb", "lb", Dimension.Mass, v => Mass.FromPounds(v).Grams, "lbs", "pound", "pounds");

    /// <summary>Millilitres.</summary>
    public static MeasureUnit Millilitre { get; } =
        new("mL", "ml", Dimension.Volume, v => v, "millilitre", "millilitres", "milliliter", "milliliters", "cc");

    /// <summary>Cubic inches.</summary>
    public static MeasureUnit CubicInch { get; } =
        new("cu in", "cuin", Dimension.Volume, v => UnitsNet.Volume.FromCubicInches(v).Milliliters, "in3", "in³");

    /// <summary>US customary cups.</summary>
    public static MeasureUnit Cup { get; } =
        new("cup", "cups", Dimension.Volume, v => UnitsNet.Volume.FromUsCustomaryCups(v).Milliliters);

    /// <summary>Cups of 240 mL, as food labels count them (21 CFR 101.9(b)(5)(viii)).</summary>
    public static MeasureUnit LabelCup { get; } = new("label cup", "label_cups", Dimension.Volume, v => v * 240, "label cups");

    /// <summary>Metric cups of 250 mL (common practice, no source).</summary>
    public static MeasureUnit MetricCup { get; } = new("metric cup", "metric_cups", Dimension.Volume, v => v * 250, "metric cups");

    /// <summary>US customary tablespoons.</summary>
    public static MeasureUnit Tablespoon { get; } = new(
        "tbsp", "tbsp", Dimension.Volume, v => UnitsNet.Volume.FromUsTablespoons(v).Milliliters, "tablespoon", "tablespoons");

    /// <summary>US customary teaspoons.</summary>
    public static MeasureUnit Teaspoon { get; } = new(
        "tsp", "tsp", Dimension.Volume, v => UnitsNet.Volume.FromUsTeaspoons(v).Milliliters, "teaspoon", "teaspoons");

    /// <summary>Tablespoons of 15 mL, as food labels count them; the metric tablespoon of most countries too.</summary>
    public static MeasureUnit LabelTablespoon { get; } = new(
        "label tbsp", "label_tbsp", Dimension.Volume, v => v * 15, "metric tbsp", "metric_tbsp");

    /// <summary>Teaspoons of 5 mL, as food labels count them; the metric teaspoon too.</summary>
    public static MeasureUnit LabelTeaspoon { get; } = new(
        "label tsp", "label_tsp", Dimension.Volume, v => v * 5, "metric tsp", "metric_tsp");

    /// <summary>Degrees Celsius.</summary>
    public static MeasureUnit Celsius { get; } = new("°C", "c", Dimension.Temperature, v => v, "℃", "deg C");

    /// <summary>Degrees Fahrenheit.</summary>
    public static MeasureUnit Fahrenheit { get; } = new(
        "°F", "f", Dimension.Temperature, v => UnitsNet.Temperature.FromDegreesFahrenheit(v).DegreesCelsius, "℉", "deg F");

    /// <summary>Minutes.</summary>
    public static MeasureUnit Minute { get; } =
        new("min", "min", Dimension.Duration, v => v, "mins", "minute", "minutes");

    /// <summary>Hours.</summary>
    public static MeasureUnit Hour { get; } =
        new("h", "h", Dimension.Duration, v => UnitsNet.Duration.FromHours(v).Minutes, "hr", "hrs", "hour", "hours");

    /// <summary>Percent.</summary>
    public static MeasureUnit Percent { get; } = new("%", "pct", Dimension.Percent, v => v, "percent");

    /// <summary>Millimetres.</summary>
    public static MeasureUnit Millimetre { get; } =
        new("mm", "mm", Dimension.Length, v => v, "millimetre", "millimetres", "millimeter", "millimeters");

    /// <summary>Centimetres.</summary>
    public static MeasureUnit Centimetre { get; } = new(
        "cm", "cm", Dimension.Length, v => UnitsNet.Length.FromCentimeters(v).Millimeters,
        "centimetre", "centimetres", "centimeter", "centimeters");

    /// <summary>Inches.</summary>
    public static MeasureUnit Inch { get; } =
        new("in", "in", Dimension.Length, v => UnitsNet.Length.FromInches(v).Millimeters, "inch", "inches");

    /// <summary>All units, each dimension's canonical one first.</summary>
    public static IReadOnlyList<MeasureUnit> All { get; } =
    [
        Gram, Kilogram, Ounce, Pound, Millilitre, CubicInch, Cup, LabelCup, MetricCup, Tablespoon, Teaspoon,
        LabelTablespoon, LabelTeaspoon,
        Celsius, Fahrenheit, Minute, Hour, Percent, Millimetre, Centimetre, Inch,
    ];

    /// <summary>The unit that a value of this dimension is kept in, or null for a plain number and a time of day.</summary>
    public static MeasureUnit? Canonical(Dimension dimension) => All.FirstOrDefault(unit => unit.Dimension == dimension);

    /// <summary>The unit with this ending of a column name, or null.</summary>
    public static MeasureUnit? WithHeaderSuffix(string suffix) =>
        All.FirstOrDefault(unit => unit.HeaderSuffix == suffix) ?? WithText(suffix);

    /// <summary>The unit that this text stands for ("F", "grams", "°C"), or null.</summary>
    public static MeasureUnit? WithText(string text) =>
        All.FirstOrDefault(unit => unit.Spellings.Contains(text, StringComparer.OrdinalIgnoreCase));
}
