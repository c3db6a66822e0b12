namespace BakeInsights.Inference;

/// <summary>A run of values that seldom comes by chance.</summary>
/// <remarks>
/// Western Electric (1956), Statistical Quality Control Handbook, pp. 25-28; Nelson (1984), The Shewhart control chart
/// - tests for special causes, Journal of Quality Technology 16, 237-239.
/// </remarks>
public enum RunRule
{
    /// <summary>One value beyond three standard deviations.</summary>
    OneBeyondThree,

    /// <summary>Two of three values beyond two standard deviations on one side, the last among them.</summary>
    TwoOfThreeBeyondTwo,

    /// <summary>Four of five values beyond one standard deviation on one side, the last among them.</summary>
    FourOfFiveBeyondOne,

    /// <summary>Eight values in a row on one side of the centre (Western Electric).</summary>
    EightOnOneSide,

    /// <summary>Nine values in a row on one side of the centre (Nelson).</summary>
    NineOnOneSide,

    /// <summary>Six values in a row, each above the one before or each below (Nelson).</summary>
    SixRisingOrFalling,

    /// <summary>Fourteen values in a row that rise and fall by turns (Nelson).</summary>
    FourteenAlternating,

    /// <summary>Fifteen values in a row within one standard deviation, to either side (Nelson).</summary>
    FifteenWithinOne,

    /// <summary>Eight values in a row beyond one standard deviation, to either side (Nelson).</summary>
    EightBeyondOne,
}
