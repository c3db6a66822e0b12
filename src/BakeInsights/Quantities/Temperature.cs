using System.Globalization;

namespace BakeInsights;

/// <summary>A point on the temperature scale, as a probe reads it.</summary>
/// <remarks>
/// Points can't be added, only subtracted, and what comes out is a <see cref="TemperatureDifference"/>. So the
/// arithmetic here gives one answer whether it is asked in °F or in °C, and a difference never meets the 32.
/// </remarks>
public readonly record struct Temperature : IComparable<Temperature>
{
    private Temperature(double c) => C = c;

    /// <summary>Degrees Celsius.</summary>
    public double C { get; }

    /// <summary>Degrees Fahrenheit.</summary>
    public double F => DisplayUnit.For(Dimension.Temperature, UnitSystem.Us).Value(C);

    /// <summary>A temperature in degrees Celsius, finite.</summary>
    public static Temperature FromC(double degrees) => double.IsFinite(degrees)
        ? new(degrees)
        : throw new ArgumentOutOfRangeException(nameof(degrees), degrees, "A temperature is a finite number.");

    /// <summary>A temperature in degrees Fahrenheit, finite.</summary>
    public static Temperature FromF(double degrees) => FromC(MeasureUnits.Fahrenheit.ToCanonical(degrees));

    /// <summary>How much warmer the left one is.</summary>
    public static TemperatureDifference operator -(Temperature left, Temperature right) =>
        TemperatureDifference.FromC(left.C - right.C);

    /// <summary>The temperature that is so much warmer.</summary>
    public static Temperature operator +(Temperature left, TemperatureDifference right) => FromC(left.C + right.C);

    /// <summary>The temperature that is so much colder.</summary>
    public static Temperature operator -(Temperature left, TemperatureDifference right) => FromC(left.C - right.C);

    /// <summary>Whether the left one is warmer.</summary>
    public static bool operator >(Temperature left, Temperature right) => left.C > right.C;

    /// <summary>Whether the left one is colder.</summary>
    public static bool operator <(Temperature left, Temperature right) => left.C < right.C;

    /// <summary>Whether the left one is at least as warm.</summary>
    public static bool operator >=(Temperature left, Temperature right) => left.C >= right.C;

    /// <summary>Whether the left one is at most as warm.</summary>
    public static bool operator <=(Temperature left, Temperature right) => left.C <= right.C;

    /// <inheritdoc/>
    public int CompareTo(Temperature other) => C.CompareTo(other.C);

    /// <summary>As people read it, to the decimals that a kitchen probe can bear out: "24.0 °C", "75 °F".</summary>
    public string Text(UnitSystem system)
    {
        var unit = DisplayUnit.For(Dimension.Temperature, system);
        return unit.Value(C).ToString("F" + unit.Decimals, CultureInfo.InvariantCulture) + " " + unit.Label;
    }

    /// <summary>In metric units.</summary>
    public override string ToString() => Text(UnitSystem.Metric);
}
