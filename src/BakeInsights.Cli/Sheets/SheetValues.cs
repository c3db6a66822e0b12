namespace BakeInsights.Cli;

/// <summary>Reads the values of <c>bakeinsights sheet</c>.</summary>
/// <param name="units">The units that a bare temperature is in.</param>
internal sealed class SheetValues(UnitSystem units)
{
    private const string DoughTemp = "dough_temp";
    private static readonly string[] BakeNames = [DoughTemp, "hydration", "yeast", "salt", "sugar"];

    /// <summary>A time of day; null when none was given.</summary>
    public static TimeOnly? Time(string option, string? text) => text is null ? null
        : ClockTime.TryParse(text, out var time) ? time
        : throw new CommandFailure($"--{option} {text} is no time of day: write it as 13:00 or 1:00 pm.");

    /// <summary>The way of filling cups.</summary>
    public static FlourMeasure Filling(string text) => text switch
    {
        "spooned" => FlourMeasure.Spooned,
        "scooped" => FlourMeasure.Scooped,
        "sifted" => FlourMeasure.Sifted,
        _ => throw new CommandFailure($"Cups are not filled {text}: say spooned, scooped or sifted."),
    };

    /// <summary>A temperature; null when none was given.</summary>
    public Temperature? Temperature(string option, string? text) => text is null ? null
        : TemperatureOf(text) ?? throw new CommandFailure($"--{option} {text} is no temperature: write it as 21C or 70F.");

    /// <summary>The two taps; null when they weren't given.</summary>
    public (Temperature Cold, Temperature Hot)? BothTaps(string? text) => text is null ? null
        : text.Split(',') is [var cold, var hot] && TemperatureOf(cold) is { } one && TemperatureOf(hot) is { } other
            ? (one, other)
            : throw new CommandFailure($"--taps {text} are not two temperatures: write the cold one first, as 12C,55C.");

    /// <summary>A number, grams where a unit of mass stands behind it; null when none was given.</summary>
    public double? Number(string option, string? text) => text is null ? null
        : NumberOf(text, MeasureUnits.Gram) ?? throw new CommandFailure($"--{option} {text} is no number of grams: write it as 800.");

    /// <summary>A whole number; null when none was given.</summary>
    public int? Whole(string option, string? text) => text is null ? null
        : NumberOf(text, null) is { } number && number == Math.Floor(number) && Math.Abs(number) < int.MaxValue ? (int)number
        : throw new CommandFailure($"--{option} {text} is no whole number: write it as 4.");

    /// <summary>A bake: a name, and behind a colon what is to be otherwise than in the formula.</summary>
    public SheetBake Bake(string text)
    {
        var equals = text.IndexOf('=', StringComparison.Ordinal);
        var colon = equals < 0 ? text.Length : text.LastIndexOf(':', equals);
        var name = colon <= 0 ? "" : text[..colon].TrimEnd(':').Trim();
        var bake = new SheetBake { Name = name };
        return equals < 0
            ? bake
            : text[(colon + 1)..].Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
                .Aggregate(bake, (so, part) => With(so, part, text));
    }

    private SheetBake With(SheetBake bake, string part, string whole)
    {
        var sign = part.IndexOf('=', StringComparison.Ordinal);
        var (name, value) = sign < 0 ? (part, "") : (part[..sign].Trim(), part[(sign + 1)..].Trim());
        if (!BakeNames.Contains(name))
        {
            throw new CommandFailure($"--bake {whole} has no setting {name}: there are {string.Join(", ", BakeNames)}.");
        }

        if (name == DoughTemp)
        {
            return bake with
            {
                Dough = TemperatureOf(value) ?? throw new CommandFailure($"--bake {whole}: {value} is no temperature: write it as 24C or 76F."),
            };
        }

        var percent = NumberOf(value, MeasureUnits.Percent)
            ?? throw new CommandFailure($"--bake {whole}: {value} is no percentage of flour: write it as {name}=2.");
        return name switch
        {
            "hydration" => bake with { HydrationPct = percent },
            "yeast" => bake with { YeastPct = percent },
            "salt" => bake with { SaltPct = percent },
            _ => bake with { SugarPct = percent },
        };
    }

    private Temperature? TemperatureOf(string text)
    {
        var bare = units == UnitSystem.Us ? MeasureUnits.Fahrenheit : MeasureUnits.Celsius;
        return NumberOf(text, bare) is { } celsius ? BakeInsights.Temperature.FromC(celsius) : null;
    }

    // In the canonical unit of the dimension; null for what is no such quantity.
    private static double? NumberOf(string text, MeasureUnit? bare)
    {
        if (!QuantityText.TryParse(text, out var quantity) || !double.IsFinite(quantity.Value))
        {
            return null;
        }

        return quantity.Unit is null ? bare is null ? quantity.Value : bare.ToCanonical(quantity.Value)
            : quantity.Unit.Dimension == bare?.Dimension ? quantity.Unit.ToCanonical(quantity.Value)
            : null;
    }
}
