using Xunit;

namespace BakeInsights.Tests;

/// <summary>Which questions a month is asked.</summary>
public class MonthAnswersTests
{
    private static readonly Journal Class = ClassDemo.Kitchen.Months(18, 2, 36);

    [Fact]
    public void A_class_is_asked_about_causes_scores_groups_and_changes_in_one_family()
    {
        var asked = MonthAnswers.Of(Class, "");
        string[] names = [.. asked.Answers.Select(answer => answer.Name), .. asked.Open.Select(open => open.Name)];
        Assert.Equal(names.Length, names.Distinct().Count());
        string[] expected =
        [
            "rise_time.dough_temperature", "rise_time.yeast", "rise_time.hydration", "rise_time.salt", "rise_time.sugar",
            "rise_time.dough_temperature_curve", "proof_time.dough_temperature", "proof_time.yeast", "proof_time.hydration",
            "loaf_volume.hydration", "loaf_volume.dough_temperature", "loaf_volume.proof_time",
            "crumb_score.hydration", "crumb_score.dough_temperature", "crumb_score.proof_time",
            "flavour_score.hydration", "flavour_score.dough_temperature", "flavour_score.proof_time",
            "openness_score.middle", "openness_score.hydration", "openness_score.dough_temperature", "openness_score.proof_time",
            "rise_time.between_group", "loaf_volume.between_group", "rise_time.between_baker", "loaf_volume.between_baker",
            "month.dough_temperature", "month.rise_time", "month.rise_time_as_logged", "month.specific_volume", "month.hydration",
            "month.bake_loss", "friction_factor.drift", "bake_loss.drift",
        ];
        Assert.Equal(expected.Order(StringComparer.Ordinal), names.Order(StringComparer.Ordinal));

        // Holm's smallest: the sum of weights times the smallest ratio of p value to weight. Five main questions weigh four.
        var family = MonthReview.Of(Class, "").Family;
        Assert.Equal(asked.Answers.Count, family.Answers.Count);
        Assert.Equal(family.Answers.Count + (5 * 3), family.Answers.Sum(answer => answer.Weight));
        var clearest = family.Answers.MinBy(answer => answer.PValue / answer.Weight)!;
        Assert.Equal(Math.Min(1, (family.Answers.Count + (5 * 3)) * clearest.PValue / clearest.Weight), clearest.FamilyPValue, 1e-12);
    }

    [Fact]
    public void Scores_of_the_month_alone_count()
    {
        var scores = MonthAnswers.Of(Class, "2026-09").Scores;
        Assert.Equal(["crumb_score", "flavour_score", "openness_score"], scores.Attributes.Select(attribute => attribute.Name));
        Assert.All(scores.Attributes, attribute => Assert.Equal(36, attribute.Bakes));
    }

    [Fact]
    public void Bakers_of_one_bench_may_differ_by_the_bench_and_that_is_said()
    {
        var asked = MonthAnswers.Of(Class, "");
        var bakers = asked.Answers.Single(answer => answer.Name == "rise_time.between_baker");
        Assert.Equal("Each baker belongs to one group, so what sets one baker apart may be the group's.", bakers.Caveats[0]);
        Assert.DoesNotContain(bakers.Caveats[0], asked.Answers.Single(answer => answer.Name == "rise_time.between_group").Caveats);
    }

    [Theory]
    [InlineData("A", "A", 0)] // one group
    [InlineData("A", "B", 2)]
    public void Groups_are_asked_about_where_there_are_several(string first, string second, int questions)
    {
        var bakes = Dough.Bakes(20, (dough, index) => dough with { Group = index % 2 == 0 ? first : second });
        Assert.Equal(questions, Names(MonthGroups.Ask, bakes).Count);
    }

    [Fact]
    public void Bakers_who_are_the_groups_are_asked_about_once()
    {
        var kitchen = ClassDemo.Kitchen with { Hands = ClassDemo.Kitchen.Hands with { Bakers = ["Brannoc", "Sunniva", "Yorath"] } };
        Assert.Equal(["rise_time.between_group", "loaf_volume.between_group"], Names(MonthGroups.Ask, kitchen.Bakes(5, 36)));
    }

    [Fact]
    public void A_group_that_can_not_be_compared_stays_an_open_question()
    {
        var asked = new Asked();
        MonthGroups.Ask(asked, Dough.Bakes(6, (dough, index) => new Dough { RiseMin = dough.RiseMin, Group = $"bench {index}" }));
        Assert.Empty(asked.Answers);
        Assert.Equal(["rise_time.between_group", "loaf_volume.between_group"], asked.Open.Select(open => open.Name));
    }

    [Fact]
    public void Columns_of_numbers_and_of_a_few_words_that_come_back_make_questions_and_notes_do_not()
    {
        var bakes = Bakes(24, index =>
        [
            ("kneading", index % 2 == 0 ? "by hand" : "in the mixer"), ("shelf", $"{1 + (index % 4)}"), ("remark", $"day {index}"),
            ("oven", "deck"), ("once", index == 3 ? "yes" : ""), ("mixed", index % 2 == 0 ? "3" : "few"),
        ]);
        Assert.Equal(
            [("kneading", ColumnForm.Levels), ("mixed", ColumnForm.Levels), ("shelf", ColumnForm.Line)], MonthColumns.Chosen(bakes));
        Assert.Equal(
            ["rise_time.own_kneading", "loaf_volume.own_kneading", "rise_time.own_mixed", "loaf_volume.own_mixed", "rise_time.own_shelf",
                "loaf_volume.own_shelf"],
            Names(MonthColumns.Ask, bakes));
    }

    [Fact]
    public void Of_many_columns_the_three_in_the_most_bakes_are_asked_whatever_the_order_of_the_bakes()
    {
        var bakes = Bakes(20, index =>
        [
            ("a", index < 12 ? $"{index}" : ""), ("b", $"{index % 3}"), ("c", $"{index % 4}"), ("d", index < 18 ? $"{index % 5}" : ""), ("e", index < 9 ? $"{index}" : ""),
        ]);
        Assert.Equal(["b", "c", "d"], MonthColumns.Chosen(bakes).Select(one => one.Column));
        Assert.Equal(MonthColumns.Chosen(bakes), MonthColumns.Chosen([.. bakes.Reverse()]));
    }

    [Fact]
    public void A_column_called_as_a_cause_is_a_question_of_its_own()
    {
        var journal = Class with { Bakes = Bakes(30, index => [("hydration", $"{index * 7 % 5}"), ("hydration_pct", $"{index % 3}")]), Scores = [] };
        var names = MonthAnswers.Of(journal, "").Answers.Select(answer => answer.Name).ToList();
        Assert.Contains("rise_time.hydration", names);
        Assert.Contains("rise_time.own_hydration", names);

        // It would be taken for the measure.
        Assert.DoesNotContain("rise_time.own_hydration_pct", names);
    }

    private static List<string> Names(Action<Asked, IReadOnlyList<Bake>> ask, IReadOnlyList<Bake> bakes)
    {
        var asked = new Asked();
        ask(asked, bakes);
        return [.. asked.Answers.Select(answer => answer.Name), .. asked.Open.Select(open => open.Name)];
    }

    private static IReadOnlyList<Bake> Bakes(int count, Func<int, (string Column, string Cell)[]> own) =>
    [
        .. Dough.Bakes(count, (dough, _) => dough).Select((bake, index) =>
        {
            var row = bake.Row.Copy();
            foreach (var (column, cell) in own(index).Where(pair => pair.Cell.Length > 0))
            {
                row.Keep(column, cell);
            }

            return new Bake(row);
        }),
    ];
}
