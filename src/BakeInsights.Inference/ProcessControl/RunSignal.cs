namespace BakeInsights.Inference;

/// <summary>A rule that a series of values breaks.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="First">The first value of the run, counted from 0.</param>
/// <param name="Last">The value at which the run is complete, counted from 0.</param>
public sealed record RunSignal(RunRule Rule, int First, int Last)
{
    /// <summary>Finds all runs, in the order in which they are complete.</summary>
    /// <param name="values">The values in order of time; a NaN breaks no rule and ends a run.</param>
    /// <param name="centre">The centre.</param>
    /// <param name="standardDeviation">The standard deviation, above 0.</param>
    /// <param name="rules">The rules to look for.</param>
    /// <exception cref="ArgumentOutOfRangeException">The standard deviation is not above 0.</exception>
    public static IReadOnlyList<RunSignal> Find(
        IReadOnlyList<double> values, double centre, double standardDeviation, IReadOnlyList<RunRule> rules)
    {
        ArgumentNullException.ThrowIfNull(values);
        ArgumentNullException.ThrowIfNull(rules);
        if (!(standardDeviation > 0))
        {
            throw new ArgumentOutOfRangeException(
                nameof(standardDeviation), standardDeviation, "A standard deviation is above 0.");
        }

        double[] z = [.. values.Select(v => (v - centre) / standardDeviation)];
        return
        [
            .. from last in Enumerable.Range(0, z.Length)
               from rule in rules
               let length = Length(rule)
               where last + 1 >= length && Breaks(rule, z.AsSpan(last + 1 - length, length))
               select new RunSignal(rule, last + 1 - length, last),
        ];
    }

    private static int Length(RunRule rule) => rule switch
    {
        RunRule.OneBeyondThree => 1,
        RunRule.TwoOfThreeBeyondTwo => 3,
        RunRule.FourOfFiveBeyondOne => 5,
        RunRule.EightOnOneSide or RunRule.EightBeyondOne => 8,
        RunRule.NineOnOneSide => 9,
        RunRule.SixRisingOrFalling => 6,
        RunRule.FourteenAlternating => 14,
        RunRule.FifteenWithinOne => 15,
        _ => throw new ArgumentOutOfRangeException(nameof(rule), rule, "No such rule."),
    };

    private static bool Breaks(RunRule rule, ReadOnlySpan<double> z) => rule switch
    {
        RunRule.OneBeyondThree => Math.Abs(z[0]) > 3,
        RunRule.TwoOfThreeBeyondTwo => Beyond(z, 2, 2),
        RunRule.FourOfFiveBeyondOne => Beyond(z, 1, 4),
        RunRule.EightOnOneSide or RunRule.NineOnOneSide => Beyond(z, 0, z.Length),
        RunRule.SixRisingOrFalling => Turns(z, 1),
        RunRule.FourteenAlternating => Turns(z, -1),
        RunRule.FifteenWithinOne => Count(z, v => Math.Abs(v) < 1) == z.Length,
        _ => Count(z, v => Math.Abs(v) > 1) == z.Length,
    };

    private static bool Beyond(ReadOnlySpan<double> z, double limit, int needed) =>
        (z[^1] > limit && Count(z, v => v > limit) >= needed)
        || (z[^1] < -limit && Count(z, v => v < -limit) >= needed);

    /// <summary>Whether each step has the direction of the one before, or, with a sign of -1, the other.</summary>
    private static bool Turns(ReadOnlySpan<double> z, int sign)
    {
        for (var i = 2; i < z.Length; i++)
        {
            if (!(sign * (z[i] - z[i - 1]) * (z[i - 1] - z[i - 2]) > 0))
            {
                return false;
            }
        }

        return true;
    }

    private static int Count(ReadOnlySpan<double> z, Func<double, bool> holds)
    {
        var count = 0;
        foreach (var v in z)
        {
            count += holds(v) ? 1 : 0;
        }

        return count;
    }
}
