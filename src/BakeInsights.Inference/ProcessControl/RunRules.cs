namespace BakeInsights.Inference;

/// <summary>The published sets of <see cref="RunRule"/>.</summary>
public static class RunRules
{
    /// <summary>The four of Western Electric (1956), Statistical Quality Control Handbook.</summary>
    public static IReadOnlyList<RunRule> WesternElectric { get; } =
    [
        RunRule.OneBeyondThree, RunRule.TwoOfThreeBeyondTwo, RunRule.FourOfFiveBeyondOne, RunRule.EightOnOneSide,
    ];

    /// <summary>The eight of Nelson (1984), Journal of Quality Technology 16, 237-239.</summary>
    public static IReadOnlyList<RunRule> Nelson { get; } =
    [
        RunRule.OneBeyondThree, RunRule.NineOnOneSide, RunRule.SixRisingOrFalling, RunRule.FourteenAlternating,
        RunRule.TwoOfThreeBeyondTwo, RunRule.FourOfFiveBeyondOne, RunRule.FifteenWithinOne, RunRule.EightBeyondOne,
    ];
}
