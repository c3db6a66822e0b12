using Xunit;
using Xunit.Abstractions;

namespace BakeInsights.Tests;

/// <summary>Simulated journals in which nothing matters, or in which the truth is known.</summary>
public class ScoreLevelTests(ITestOutputHelper output)
{
    private const int Journals = 2_000;
    private const int JournalsWithEffect = 1_000;

    // Two loaves a bake in the short journals, one in the long ones.
    private const int ShortJournal = 12;

    // Scores of a panel of three; of judges who come and go; of one judge on a coarse scale.
    public static TheoryData<int, string> Cases => new()
    {
        { 12, "panel" }, { 20, "panel" }, { 12, "coming and going" }, { 20, "coming and going" }, { 12, "one judge" }, { 20, "one judge" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void P_values_keep_their_level_where_nothing_matters(int bakes, string kind)
    {
        var (asked, below, covered) = Simulate(bakes, kind, 0, 1);
        output.WriteLine($"{kind}, {bakes}: {100.0 * below / asked:F2} % at most 0.05, {100.0 * covered / asked:F2} % hold nothing, of {asked}");
        Assert.True(asked > Journals, $"{asked} answers");
        Assert.True(below <= 0.055 * asked, $"{100.0 * below / asked:F2} % of {asked}");
        Assert.InRange(100.0 * covered / asked, 94, 97);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Intervals_hold_the_true_effect_of_hydration(int bakes, string kind)
    {
        // 0.15 points for each percent, on a scale of 21 scores, so that its ends are not reached.
        var (asked, _, covered) = Simulate(bakes, kind, 0.15, 4);
        output.WriteLine($"{kind}, {bakes}: {100.0 * covered / asked:F2} % hold the effect, of {asked}");
        Assert.InRange(100.0 * covered / asked, 93, 97);
    }

    // Bakes' own scatter of 0.7 points, loaves' of 0.3, judges' of 0.6 and their severity of 0.8.
    private static (int Asked, int Below, int Covered) Simulate(int count, string kind, double perPercent, int finer)
    {
        var bakes = ScoredJournal.Bakes(count);
        var highest = 5.0 * finer;
        var (asked, below, covered) = (0, 0, 0);

        // One stream for all journals: the first draws of neighbouring seeds are alike.
        var chance = new Chance(count);
        for (var journal = 0; journal < (perPercent == 0 ? Journals : JournalsWithEffect); journal++)
        {
            double[] severity = [.. Enumerable.Range(0, 3).Select(_ => 0.8 * chance.Normal())];
            List<Score> scores = [];
            for (var i = 0; i < count; i++)
            {
                var quality = (3.0 * finer) + (0.7 * finer * chance.Normal())
                    + (perPercent * (Measures.Hydration.Of(bakes[i])!.Value - 66));
                for (var loaf = 0; loaf < (count == ShortJournal ? 2 : 1); loaf++)
                {
                    var own = quality + (0.3 * finer * chance.Normal());
                    for (var judge = 0; judge < 3; judge++)
                    {
                        var value = ScoredJournal.Whole(own + severity[judge] + (0.6 * finer * chance.Normal()), highest);
                        var there = kind switch
                        {
                            "panel" => true,
                            "one judge" => judge == 0,
                            _ => judge == 0 || (judge == 1 && i % 2 == 0) || (judge == 2 && i % 4 == 1),
                        };
                        if (there)
                        {
                            scores.Add(ScoredJournal.Score(bakes[i], $"J{judge}", "crumb", value, $"{loaf}"));
                        }
                    }
                }
            }

            foreach (var answer in ScoreAnswers.Of(bakes, scores, [ScoredJournal.Scale("crumb", 1, highest, AttributeKind.MoreIsBetter)]).Answers)
            {
                var isHydration = answer.Name == "crumb_score.hydration";
                if (perPercent != 0 && !isHydration)
                {
                    continue;
                }

                var truth = isHydration ? 3 * perPercent : 0;
                asked++;
                below += answer.PValue <= 0.05 ? 1 : 0;
                covered += answer.Effect.Low <= truth && truth <= answer.Effect.High ? 1 : 0;
            }
        }

        return (asked, below, covered);
    }
}
