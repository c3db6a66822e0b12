using System.Globalization;
using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>Quantities in any of the spellings that are accepted, read back.</summary>
public class QuantitySpellingTests
{
    private static readonly Gen<string> Blank = Gen.OneOf("", " ", "  ", "\u00A0", "\u2009", "\u202F", "\u3000", " \u200B");

    // Ounces in a pound and teaspoons in a tablespoon: NIST Handbook 44, Appendix C.
    private static readonly (string Large, string Small, int Parts)[] Compounds =
    [
        ("lb", "oz", 16), ("kg", "g", 1000), ("h", "min", 60), ("hours", "minutes", 60), ("tbsp", "tsp", 3), ("cups", "tbsp", 16),
    ];

    private static readonly (string Text, double Value)[] Fractions =
    [
        ("½", 0.5), ("1/2", 0.5), ("¼", 0.25), ("¾", 0.75), ("3/4", 0.75), ("⅓", 1 / 3.0), ("⅔", 2 / 3.0), ("2⁄3", 2 / 3.0), ("⅛", 0.125),
        ("⅝", 0.625), ("⅒", 0.1), ("5/16", 0.3125),
    ];

    [Fact]
    public void Number_is_the_same_with_a_point_or_a_comma_and_any_unit_of_its_kind() =>
        Gen.Select(Gen.Double[-1_000, 5_000], Gen.Int[0, 6], Blank, Gen.Int[0, MeasureUnits.All.Count - 1], Gen.Int[0, 20], Gen.Enum<DecimalMark>())
            .Sample((number, decimals, blank, place, spelling, mark) =>
            {
                var unit = MeasureUnits.All[place];
                var text = number.ToString("F" + decimals, CultureInfo.InvariantCulture);
                var exact = double.Parse(text, CultureInfo.InvariantCulture);
                var behind = blank + unit.Spellings[spelling % unit.Spellings.Count];
                var comma = text.Replace('.', ',').Replace('-', '\u2212');

                // Three decimals can be taken for thousands: only the mark of the file tells.
                return (decimals == 3 && mark != DecimalMark.Point) || Reads(text + behind, mark, unit.ToCanonical(exact), unit.Dimension)
                    && ((decimals == 3 && mark != DecimalMark.Comma) || Reads(comma + behind, decimals == 3 ? DecimalMark.Comma : mark, unit.ToCanonical(exact), unit.Dimension));
            });

    [Fact]
    public void Thousands_may_be_grouped_by_the_other_sign() =>
        Gen.Select(Gen.Int[0, 999_999_999], Gen.Int[0, 99]).Sample((whole, parts) =>
        {
            var grouped = whole.ToString("N0", CultureInfo.InvariantCulture);
            var value = whole + (parts / 100.0);
            return Reads($"{grouped}.{parts:00}", DecimalMark.Point, value, null)
                && Reads($"{grouped.Replace(',', '.')},{parts:00}", DecimalMark.Comma, value, null)
                && Reads(grouped, DecimalMark.Point, whole, null)
                && Reads(grouped.Replace(',', '.'), DecimalMark.Comma, whole, null);
        });

    [Fact]
    public void Fraction_behind_a_number_is_added_to_it() =>
        Gen.Select(Gen.Int[0, 500], Gen.Int[0, Fractions.Length - 1], Blank, Gen.Bool).Sample((whole, place, blank, isNegative) =>
        {
            var (text, part) = Fractions[place];
            var sign = isNegative ? "-" : "";
            var written = whole == 0 ? text : $"{whole} {text}";
            var value = (isNegative ? -1 : 1) * (whole + part);
            return Reads(sign + written + blank + "tsp", DecimalMark.Both, MeasureUnits.Teaspoon.ToCanonical(value), Dimension.Volume)
                && Reads(sign + written, DecimalMark.NotShown, value, null);
        });

    [Fact]
    public void Parts_of_a_compound_add_up() =>
        Gen.Select(Gen.Int[1, 90], Gen.Double.Unit, Gen.Int[0, Compounds.Length - 1], Blank, Blank).Sample((large, part, place, one, other) =>
        {
            var (unit, smaller, parts) = Compounds[place];
            var small = Math.Floor(part * parts);
            var expected = MeasureUnits.WithText(unit)!.ToCanonical(large + (small / parts));
            return Reads($"{large}{one}{unit}{other}{small}{one}{smaller}", DecimalMark.Both, expected, MeasureUnits.WithText(unit)!.Dimension);
        });

    [Fact]
    public void Minutes_are_the_same_in_every_spelling_of_a_duration() =>
        Gen.Int[0, 5_760].Sample(minutes =>
        {
            var (hours, rest) = Math.DivRem(minutes, 60);
            string[] spellings =
            [
                $"{hours}:{rest:00}", $"{hours:00}:{rest:00}:00", $"{hours} h {rest} min", $"{hours}h{rest:00}", $"{hours} hrs. {rest}",
                $"{minutes} min", $"{minutes}mins", $"{hours} {rest}/60 h", (minutes / 60.0).ToString("R", CultureInfo.InvariantCulture) + " h",
            ];
            return spellings.All(text => Reads(text, DecimalMark.Point, minutes, Dimension.Duration));
        });

    [Fact]
    public void Any_text_is_read_as_a_finite_number_or_not_at_all() =>
        Gen.OneOf("1", "0", "23", "999", ".", ",", "-", "\u2212", "/", "½", "¾", ":", " ", "e", "E+", "lb", "oz", "h", "min", "°", "F", "%", "İ", "٣")
            .Array[0, 9].Select(string.Concat).Sample(text =>
            {
                foreach (var mark in Enum.GetValues<DecimalMark>())
                {
                    Assert.True(!QuantityText.TryParse(text, mark, out var quantity) || double.IsFinite(quantity.Value));
                }

                Assert.True(!ClockText.TryTimeOfDay(text, out var minutes) || minutes is >= 0 and < 1_440);
                WrittenDay.Parse(text);
            });

    private static bool Reads(string text, DecimalMark mark, double expected, Dimension? dimension)
    {
        var isRead = QuantityText.TryParse(text, mark, out var quantity);
        var canonical = quantity.Unit?.ToCanonical(quantity.Value) ?? quantity.Value;
        Assert.True(isRead, $"'{text}' was not read.");
        Assert.Equal(dimension, quantity.Unit?.Dimension);
        Assert.True(Math.Abs(canonical - expected) <= 1e-9 * Math.Max(1, Math.Abs(expected)), $"'{text}' was read as {canonical}, not {expected}.");
        return true;
    }
}
