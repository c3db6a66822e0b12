using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>
/// All questions asked of a journal at once. Over the whole family the chance of any false finding is at most 5 %
/// when nothing matters.
/// </summary>
public sealed class FindingFamily
{
    /// <summary>The chance of any false finding among all questions asked.</summary>
    public const double FalseFindingChance = 0.05;

    // Our own choice: a family p value that chance gives once in a thousand journals, and bakes enough for the normal
    // scatter that it assumes to be seen.
    private const double FirmPValue = 0.001;
    private const int FirmBakes = 20;

    private FindingFamily(IReadOnlyList<Finding> answers, IReadOnlyList<OpenQuestion> open)
    {
        Answers = answers;
        Open = open;
    }

    /// <summary>Every question that has an answer, in the order asked, whether or not it is a finding.</summary>
    public IReadOnlyList<Finding> Answers { get; }

    /// <summary>The answers that are findings.</summary>
    public IReadOnlyList<Finding> Findings => [.. Answers.Where(answer => answer.IsFinding)];

    /// <summary>The questions that the journal can't answer, in the order asked.</summary>
    public IReadOnlyList<OpenQuestion> Open { get; }

    /// <summary>
    /// Counts the questions and judges each answer. A finding needs a family p value of at most
    /// <see cref="FalseFindingChance"/>; an interval, of all bakes and of those that are not odd, that lies on one side
    /// of nothing; and a cause that the journal tells apart from the others.
    /// </summary>
    /// <param name="answers">The answers, not yet judged; an answer's name may come once only.</param>
    /// <param name="open">The questions without an answer.</param>
    public static FindingFamily Judge(IEnumerable<Finding> answers, IEnumerable<OpenQuestion> open)
    {
        ArgumentNullException.ThrowIfNull(answers);
        ArgumentNullException.ThrowIfNull(open);
        Finding[] asked = [.. answers];
        if (asked.GroupBy(answer => answer.Name).FirstOrDefault(same => same.Count() > 1) is { } twice)
        {
            throw new ArgumentException($"The question {twice.Key} is asked twice.", nameof(answers));
        }

        var family = AdjustedPValues.Holm([.. asked.Select(answer => answer.PValue)], [.. asked.Select(answer => answer.Weight)]);
        return new FindingFamily(
            [.. asked.Select((answer, place) => answer with { FamilyPValue = family[place], Strength = StrengthOf(answer, family[place]) })],
            [.. open]);
    }

    private static Strength StrengthOf(Finding answer, double familyPValue)
    {
        var effectHolds = Holds(answer.Effect, answer.WithoutOddBakes, answer);
        var bendHolds = answer.Bend is { } bend && Holds(bend, answer.BendWithoutOddBakes, answer);
        if (!IsOneSided(answer.Effect) && !(answer.Bend is { } curve && IsOneSided(curve)) && answer.PValue > FalseFindingChance)
        {
            return Strength.Open;
        }

        return familyPValue > FalseFindingChance || answer.MovedTogetherWith.Count > 0 || !(effectHolds || bendHolds) ? Strength.Hint
            : familyPValue <= FirmPValue && answer.Bakes.Count >= FirmBakes ? Strength.Firm
            : Strength.BorneOut;
    }

    private static bool Holds(Estimate estimate, Estimate? without, Finding answer) =>
        IsOneSided(estimate)
        && (answer.OddBakes.Count == 0 || (without is not null && IsOneSided(without) && Math.Sign(without.Value) == Math.Sign(estimate.Value)));

    private static bool IsOneSided(Estimate effect) => effect is { Low: > 0 } or { High: < 0 };
}
