namespace BakeInsights;

/// <summary>How far the planned bakes may be expected to narrow the answer.</summary>
/// <param name="Now">The interval as the journal has it.</param>
/// <param name="After">Half the interval after the bakes, in half of the made-up outcomes at most; in the question's unit.</param>
/// <param name="AfterAtWorst">The same in nine of ten outcomes.</param>
/// <param name="StillOpenShare">The share of outcomes that leave the answer open over all that may be baked.</param>
public sealed record Narrowing(AnswerInterval Now, double After, double AfterAtWorst, double StillOpenShare);
