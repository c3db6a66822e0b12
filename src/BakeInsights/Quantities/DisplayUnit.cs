using UnitsNet;

namespace BakeInsights;

/// <summary>How a value kept in a canonical unit is shown to people: converted, with a label and a number of decimals.</summary>
/// <remarks>
/// All conversions are straight lines, value = canonical x <see cref="Factor"/> + <see cref="Offset"/>, and a
/// difference of two values is converted by the factor alone: 5 °F of difference are 2.8 °C, never -15 °C.
/// </remarks>
/// <param name="Label">The unit's symbol; empty for a plain number.</param>
/// <param name="Factor">Display units in one canonical unit.</param>
/// <param name="Offset">What the display scale reads at canonical zero.</param>
/// <param name="Decimals">Decimals that a kitchen instrument can bear out.</param>
public sealed record DisplayUnit(string Label, double Factor, double Offset, int Decimals)
{
    private static readonly double GramsInOunce = Mass.FromOunces(1).Grams;
    private static readonly double MillilitresInCubicInch = UnitsNet.Volume.FromCubicInches(1).Milliliters;

    private static readonly double MillimetresInInch = Length.FromInches(1).Millimeters;

    /// <summary>The display unit of a dimension in a system of units.</summary>
    public static DisplayUnit For(Dimension dimension, UnitSystem system) => (dimension, system) switch
    {
        (Dimension.Temperature, UnitSystem.Us) => new("°F", 1.8, 32, 0),
        (Dimension.Temperature, _) => new("°C", 1, 0, 1),
        (Dimension.Mass, UnitSystem.Us) => new("oz", 1 / GramsInOunce, 0, 1),
        (Dimension.Mass, _) => new("g", 1, 0, 0),
        (Dimension.Volume, UnitSystem.Us) => new("cu in", 1 / MillilitresInCubicInch, 0, 0),
        (Dimension.Volume, _) => new("mL", 1, 0, 0),
        (Dimension.SpecificVolume, UnitSystem.Us) => new("cu in/oz", GramsInOunce / MillilitresInCubicInch, 0, 2),
        (Dimension.SpecificVolume, _) => new("mL/g", 1, 0, 2),
        (Dimension.Length, UnitSystem.Us) => new("in", 1 / MillimetresInInch, 0, 1),
        (Dimension.Length, _) => new("mm", 1, 0, 0),
        (Dimension.Duration, _) => new("min", 1, 0, 0),
        (Dimension.Percent, _) => new("%", 1, 0, 1),
        _ => new("", 1, 0, 1),
    };

    /// <summary>A point on the scale, in display units.</summary>
    public double Value(double canonical) => (canonical * Factor) + Offset;

    /// <summary>A difference of two points, in display units: the offset does not belong to it.</summary>
    public double Difference(double canonical) => canonical * Factor;
}
