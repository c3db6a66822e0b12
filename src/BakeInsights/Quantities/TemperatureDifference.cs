using System.Globalization;

namespace BakeInsights;

/// <summary>How far apart two temperatures are: a friction factor, a cooling. 5 °F of difference are 2.8 °C.</summary>
public readonly record struct TemperatureDifference : IComparable<TemperatureDifference>
{
    private TemperatureDifference(double c) => C = c;

    /// <summary>No difference.</summary>
    public static TemperatureDifference Zero { get; }

    /// <summary>Size in degrees Celsius (kelvins).</summary>
    public double C { get; }

    /// <summary>Size in degrees Fahrenheit.</summary>
    public double F => DisplayUnit.For(Dimension.Temperature, UnitSystem.Us).Difference(C);

    /// <summary>A difference in degrees Celsius, finite; negative for colder.</summary>
    public static TemperatureDifference FromC(double degrees) => double.IsFinite(degrees)
        ? new(degrees)
        : throw new ArgumentOutOfRangeException(nameof(degrees), degrees, "A difference is a finite number.");

    /// <summary>A difference in degrees Fahrenheit, finite; negative for colder.</summary>
    public static TemperatureDifference FromF(double degrees) =>
        FromC(degrees / DisplayUnit.For(Dimension.Temperature, UnitSystem.Us).Factor);

    /// <summary>The sum.</summary>
    public static TemperatureDifference operator +(TemperatureDifference left, TemperatureDifference right) =>
        FromC(left.C + right.C);

    /// <summary>The difference of two differences.</summary>
    public static TemperatureDifference operator -(TemperatureDifference left, TemperatureDifference right) =>
        FromC(left.C - right.C);

    /// <summary>The same size the other way.</summary>
    public static TemperatureDifference operator -(TemperatureDifference difference) => FromC(-difference.C);

    /// <summary>So many times the difference.</summary>
    public static TemperatureDifference operator *(double factor, TemperatureDifference difference) =>
        FromC(factor * difference.C);

    /// <summary>The difference split into so many parts.</summary>
    public static TemperatureDifference operator /(TemperatureDifference difference, double divisor) =>
        FromC(difference.C / divisor);

    /// <summary>Whether the left one is larger.</summary>
    public static bool operator >(TemperatureDifference left, TemperatureDifference right) => left.C > right.C;

    /// <summary>Whether the left one is smaller.</summary>
    public static bool operator <(TemperatureDifference left, TemperatureDifference right) => left.C < right.C;

    /// <inheritdoc/>
    public int CompareTo(TemperatureDifference other) => C.CompareTo(other.C);

    /// <summary>As people read it: "2.8 °C", "5 °F".</summary>
    public string Text(UnitSystem system)
    {
        var unit = DisplayUnit.For(Dimension.Temperature, system);
        return unit.Difference(C).ToString("F" + unit.Decimals, CultureInfo.InvariantCulture) + " " + unit.Label;
    }

    /// <summary>In metric units.</summary>
    public override string ToString() => Text(UnitSystem.Metric);
}
