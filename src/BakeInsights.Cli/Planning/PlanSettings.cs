using System.ComponentModel;
using System.Globalization;
using BakeInsights.Inference;
using Spectre.Console.Cli;

namespace BakeInsights.Cli;

/// <summary>What <c>bakeinsights plan</c> is asked.</summary>
internal sealed class PlanSettings : JournalSettings
{
    private const string Rise = "rise";
    private const string Volume = "volume";
    private const double Percent = 100;

    [CommandOption("--vary <NAME=LEVEL,LEVEL>")]
    [Description("Something to vary and its levels, such as hydration=64,70; may be given several times.")]
    public string[] Vary { get; init; } = [];

    [CommandOption("--benches <BENCHES>")]
    [Description("How many benches, or their names with commas between. Else the journal's groups.")]
    public string? Benches { get; init; }

    [CommandOption("--result <RESULT>")]
    [Description("What is looked at: rise or volume. Else rise.")]
    public string Result { get; init; } = Rise;

    [CommandOption("--difference <NUMBER>")]
    [Description("The difference worth finding: percent of the rise time, or mL/g of the volume (cubic inches an ounce with us).")]
    public double? Difference { get; init; }

    [CommandOption("--chance <PERCENT>")]
    [Description("How sure to be of finding it; else 80 in 100.")]
    public double Chance { get; init; } = Percent * ClassPlanWish.UsualPower;

    [CommandOption("--half")]
    [Description("Bake half of the combinations; takes three things varied or more, at two levels each.")]
    public bool Half { get; init; }

    [CommandOption("--set-for-all <NAME>")]
    [Description("Which of the varied things one oven or proof box sets for all benches at once.")]
    public string? SetForAll { get; init; }

    [CommandOption("--spare <PERCENT>")]
    [Description("Spare bakes for lost ones, in percent; else 10.")]
    public double Spare { get; init; } = ClassPlanWish.UsualSparePct;

    [CommandOption("--most <COUNT>")]
    [Description("The most bakes that one bench can make, without the spare ones; else 16.")]
    public int Most { get; init; } = ClassPlanWish.UsualMostPerBench;

    [CommandOption("--scatter <NUMBER>")]
    [Description("How much single bakes scatter, one standard deviation in the unit of the difference. Else what the journal says.")]
    public double? Scatter { get; init; }

    [CommandOption("--units <UNITS>")]
    [Description("The units that people read: metric or us. JSON stays metric.")]
    public string Units { get; init; } = UnitsOption.Metric;

    [CommandOption("--seed <NUMBER>")]
    [Description("Another order of the bakes; else 1.")]
    public int Seed { get; init; } = 1;

    /// <summary>The wish that the options say.</summary>
    /// <exception cref="CommandFailure">An option asks for what can't be.</exception>
    public ClassPlanWish Wish(IReadOnlyList<Bake> bakes)
    {
        var units = UnitsOption.Read(Units);
        var result = Result switch
        {
            Rise => Measures.RiseTime,
            Volume => Measures.SpecificVolume,
            _ => throw new CommandFailure($"There is no result {Result}: say {Rise} or {Volume}."),
        };
        var factors = Vary.Select(Factor).ToList();
        if (factors.Count == 0)
        {
            throw new CommandFailure("Nothing is varied: say what, such as --vary hydration=64,70.");
        }

        if (factors.GroupBy(factor => factor.Name).FirstOrDefault(same => same.Count() > 1) is { } twice)
        {
            throw new CommandFailure($"{twice.Key} is varied twice: give all its levels at once, such as --vary {twice.Key}=low,high.");
        }

        var unit = DisplayUnit.For(result.Dimension, result == Measures.RiseTime ? UnitSystem.Metric : units);
        double Canonical(double shown) => result == Measures.RiseTime ? shown : shown / unit.Factor;
        return new ClassPlanWish(factors, BenchNames(bakes), result, Canonical(Above(
            Difference ?? throw new CommandFailure($"How large a difference is worth finding isn't said: write --difference {(result == Measures.RiseTime ? "10" : "0.3")}."), "difference")))
        {
            Power = Chance is > 5 and < 100 ? Chance / Percent : throw new CommandFailure(Said($"--chance {Chance} is none: say more than 5 and less than 100, such as 80.")),
            IsHalf = Half,
            SetForAll = SetForAll,
            SparePct = Spare is >= 0 and <= 100 ? Spare : throw new CommandFailure(Said($"--spare {Spare} is none: say 0 to 100.")),
            MostPerBench = Most >= 1 ? Most : throw new CommandFailure(Said($"--most {Most} leaves nothing to bake: say 1 or more.")),
            Scatter = Scatter is { } scatter ? Canonical(Above(scatter, "scatter")) : null,
        };
    }

    private static FactorLevels Factor(string pair)
    {
        var sign = pair.IndexOf('=', StringComparison.Ordinal);
        string[] levels = sign < 1 ? [] : pair[(sign + 1)..].Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return levels.Length >= 2 && levels.Distinct().Count() == levels.Length
            ? new FactorLevels(pair[..sign].Trim(), levels)
            : throw new CommandFailure($"--vary {pair} has no two levels: write a name and its levels, such as hydration=64,70.");
    }

    private IReadOnlyList<string> BenchNames(IReadOnlyList<Bake> bakes)
    {
        const int most = 40;
        if (Benches is null)
        {
            var groups = bakes.Select(bake => bake[BakeColumns.Group]).OfType<string>().Distinct().Order(StringComparer.Ordinal).ToList();
            return groups.Count is >= 1 and <= most ? groups
                : throw new CommandFailure("The journal names no groups: say how many benches there are, such as --benches 4.");
        }

        if (int.TryParse(Benches, NumberStyles.None, CultureInfo.InvariantCulture, out var count))
        {
            return count is >= 1 and <= most
                ? [.. Enumerable.Range(1, count).Select(bench => Said($"bench {bench}"))]
                : throw new CommandFailure($"--benches {Benches} can't be planned: say 1 to {most}.");
        }

        string[] names = Benches.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return names.Length is >= 1 and <= most && names.Distinct().Count() == names.Length
            ? names
            : throw new CommandFailure($"--benches {Benches} can't be read: write a number, or names with commas between, none twice.");
    }

    private static double Above(double value, string option) => value > 0 && double.IsFinite(value)
        ? value
        : throw new CommandFailure(Said($"--{option} {value} is none: say a number above 0."));

    private static string Said(FormattableString text) => FormattableString.Invariant(text);
}
