using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

public class DisplayUnitTests
{
    private static readonly DisplayUnit Fahrenheit = DisplayUnit.For(Dimension.Temperature, UnitSystem.Us);

    public static TheoryData<Dimension, string, string> Labels => new()
    {
        { Dimension.Temperature, "°C", "°F" },
        { Dimension.Mass, "g", "oz" },
        { Dimension.Volume, "mL", "cu in" },
        { Dimension.SpecificVolume, "mL/g", "cu in/oz" },
        { Dimension.Duration, "min", "min" },
        { Dimension.Length, "mm", "in" },
        { Dimension.Percent, "%", "%" },
        { Dimension.Number, "", "" },
    };

    [Theory]
    [MemberData(nameof(Labels))]
    public void Dimension_has_its_label_in_each_system(Dimension dimension, string metric, string us)
    {
        Assert.Equal(metric, DisplayUnit.For(dimension, UnitSystem.Metric).Label);
        Assert.Equal(us, DisplayUnit.For(dimension, UnitSystem.Us).Label);
    }

    [Fact]
    public void Metric_shows_every_dimension_as_it_is_kept() =>
        Gen.Select(Gen.Enum<Dimension>(), Gen.Double[-1e6, 1e6]).Sample((dimension, value) =>
        {
            var unit = DisplayUnit.For(dimension, UnitSystem.Metric);
            return unit.Value(value) == value && unit.Difference(value) == value;
        });

    [Fact]
    public void Value_shown_in_us_units_reads_back_as_the_same_value() =>
        Gen.Select(Gen.OneOf(Dimension.Mass, Dimension.Volume, Dimension.Temperature, Dimension.Duration, Dimension.Length),
            Gen.Double[-1e5, 1e5]).Sample((dimension, canonical) =>
        {
            var shown = DisplayUnit.For(dimension, UnitSystem.Us);
            var back = MeasureUnits.WithText(shown.Label)!.ToCanonical(shown.Value(canonical));
            return Math.Abs(back - canonical) <= 1e-9 * Math.Max(1, Math.Abs(canonical));
        });

    // A friction factor of 5 °F is 2.8 °C, not -15 °C (the trade's water-temperature rule).
    [Fact]
    public void Difference_of_5_Fahrenheit_is_2_8_Celsius()
    {
        Assert.Equal(5, Fahrenheit.Difference(2.7778), 1e-4);
        Assert.Equal(-15, MeasureUnits.Fahrenheit.ToCanonical(5), 1e-9);
    }

    [Fact]
    public void Difference_never_gets_the_32_added() =>
        Gen.Select(Gen.Enum<Dimension>(), Gen.Enum<UnitSystem>(), Gen.Double[-1e4, 1e4], Gen.Double[-1e4, 1e4])
            .Sample((dimension, system, one, other) =>
            {
                var unit = DisplayUnit.For(dimension, system);
                var shown = unit.Value(one) - unit.Value(other);
                return Math.Abs(unit.Difference(one - other) - shown) < 1e-7 && unit.Difference(0) == 0;
            });
}
