using CsCheck;
using Xunit;
using static BakeInsights.Tests.ScoredJournal;

namespace BakeInsights.Tests;

public class ScorePropertyTests
{
    private static readonly IReadOnlyList<Bake> All = Bakes(24);

    private static readonly int[] Present = [0, 0, 0, 1, 1, 1, 2, 4];

    // Bake, judge (unnamed for 4), loaf, score: two judges who are mostly there, so that sets of judges recur.
    private static readonly Gen<(int Bake, int Judge, int Loaf, int Value)[]> Rows =
        Gen.Select(Gen.Int[0, 23], Gen.Int[0, 7].Select(i => Present[i]), Gen.Int[1, 2], Gen.Int[1, 5]).Array[0, 120];

    [Fact]
    public void Whatever_was_scored_every_number_is_finite_and_every_question_is_answered_or_open()
    {
        Gen.Select(Rows, Gen.Int[0, 2]).Sample((rows, kind) =>
        {
            var found = Ask(rows, kind == 2 ? null : (AttributeKind)kind, 0);
            foreach (var answer in found.Answers)
            {
                Assert.True(answer.PValue is >= 0 and <= 1);
                Assert.True(answer.Effect is { Low: { } low, High: { } high } && low <= answer.Effect.Value && answer.Effect.Value <= high);
                Assert.All([answer.Effect.Value, answer.Effect.Low!.Value, answer.Effect.High!.Value], number => Assert.True(double.IsFinite(number)));
            }

            var asked = found.Attributes.Count * (kind == (int)AttributeKind.MiddleIsBest ? 4 : 3);
            Assert.Equal(asked, found.Answers.Count + found.Open.Count);
        });
    }

    [Fact]
    public void A_judge_who_is_stricter_throughout_changes_no_answer_about_a_cause()
    {
        Gen.Select(Rows, Gen.Int[0, 4], Gen.Int[-3, 3]).Sample((rows, judge, shift) =>
        {
            var before = Ask(rows, AttributeKind.MoreIsBetter, 0);
            var after = Ask([.. rows.Select(row => row.Judge == judge ? row with { Value = row.Value + (2 * shift) } : row)], AttributeKind.MoreIsBetter, 0);

            // Shifted scores may leave a gap between the steps of the scale, which is all that the least spread knows.
            var same = before.Answers.Join(after.Answers, one => one.Name, other => other.Name, (one, other) => (one, other));
            Assert.All(same, pair => Assert.Equal(pair.one.Effect.Value, pair.other.Effect.Value, 1e-8));
        });
    }

    [Fact]
    public void The_order_of_the_rows_changes_nothing()
    {
        Rows.Sample(rows =>
        {
            var (one, other) = (Ask(rows, AttributeKind.MiddleIsBest, 0), Ask(rows, AttributeKind.MiddleIsBest, 1));
            Assert.Equal(one.Answers.Select(answer => answer.Name), other.Answers.Select(answer => answer.Name));
            Assert.All(one.Answers.Zip(other.Answers), pair => Assert.Equal(pair.First.Effect.Value, pair.Second.Effect.Value, 1e-9));
        });
    }

    private static ScoreAnswers Ask(IEnumerable<(int Bake, int Judge, int Loaf, int Value)> rows, AttributeKind? kind, int reversed)
    {
        Score[] scores =
        [
            .. rows.DistinctBy(row => (row.Bake, row.Judge, row.Loaf))
                .Select(row => Score(All[row.Bake], row.Judge == 4 ? null : $"J{row.Judge}", "crumb", row.Value, $"{row.Loaf}")),
        ];
        return ScoreAnswers.Of(All, reversed == 1 ? [.. scores.Reverse()] : scores, [Scale("crumb", 1, 5, kind)]);
    }
}
