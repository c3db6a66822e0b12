using BakeInsights.Inference;
using Xunit;

namespace BakeInsights.Tests;

public class RiseTimeSelectionTests
{
    private const string CauseRemark = "A journal shows what went together, not what caused it; a bake made to find out settles more.";

    [Fact]
    public void Every_cause_that_was_logged_and_changed_is_in_the_model()
    {
        var answer = Ask(24, (dough, i) => dough with { SugarPct = i % 5 });
        Assert.Equal(["intercept", "dough_temperature", "log_yeast", "hydration", "salt", "sugar"], answer.Terms.Select(term => term.Name));
        Assert.Empty(answer.LeftOutTerms);
        Assert.Empty(answer.LeftOutBakes);
        Assert.Equal(
            "ln(rise time in min), a straight line in dough temperature less 24 °C, ln(yeast percent), "
            + "hydration less 65 %, salt percent, sugar percent",
            answer.Model);
        Assert.Equal([CauseRemark], answer.Caveats);
    }

    [Fact]
    public void A_cause_that_never_varied_or_was_never_logged_is_left_out_with_its_reason()
    {
        var answer = Ask(24, (dough, _) => dough with { SaltPct = 2 });
        Assert.Equal(
            [("sugar", "It is not in the journal."), ("salt", "Salt hardly changed from bake to bake.")],
            answer.LeftOutTerms.Select(left => (left.Name, left.Reason)));
    }

    [Fact]
    public void A_cause_known_of_fewer_than_half_the_bakes_is_left_out_rather_than_the_bakes()
    {
        var few = Ask(24, (dough, i) => dough with { SugarPct = i < 11 ? i % 5 : null });
        Assert.Equal(new LeftOutTerm("sugar", "It is known of only 11 of 24 bakes."), Assert.Single(few.LeftOutTerms));
        Assert.Equal(24, few.Used.Count);

        var half = Ask(24, (dough, i) => dough with { SugarPct = i < 12 ? i % 5 : null });
        Assert.Empty(half.LeftOutTerms);
        Assert.Equal("no sugar", Assert.Single(half.LeftOutBakes).Reason);
        Assert.Equal(12, half.Used.Count);
    }

    [Fact]
    public void Of_causes_that_moved_together_the_less_important_is_left_out()
    {
        var answer = Ask(24, (dough, _) => dough with { HydrationPct = 60 + (2 * (dough.Celsius - 20)) });
        Assert.Contains(
            new LeftOutTerm("hydration", "It moved together with dough temperature, so this journal can't tell them apart."),
            answer.LeftOutTerms);
    }

    [Fact]
    public void With_few_bakes_the_less_important_causes_go_first()
    {
        var answer = Ask(6, (dough, _) => dough);
        Assert.Equal(["intercept", "dough_temperature", "log_yeast"], answer.Terms.Select(term => term.Name));
        Assert.Equal(
            [
                ("sugar", "It is not in the journal."),
                ("salt", "It would take 8 bakes, and there are 6."),
                ("hydration", "It would take 7 bakes, and there are 6."),
            ],
            answer.LeftOutTerms.Select(left => (left.Name, left.Reason)));
    }

    [Fact]
    public void Bakes_that_lacked_only_a_cause_that_was_dropped_are_used_after_all()
    {
        // Salt is known of five of eight bakes and can't be afforded with them; without it all eight serve.
        var answer = Ask(8, (dough, i) => dough with { SaltPct = i < 5 ? dough.SaltPct : null });
        Assert.Contains(answer.LeftOutTerms, left => left == new LeftOutTerm("salt", "It would take 8 bakes, and there are 5."));
        Assert.Empty(answer.LeftOutBakes);
        Assert.Equal(8, answer.Used.Count);
    }

    [Fact]
    public void A_cause_that_changed_only_in_bakes_that_can_not_be_used_hardly_changed()
    {
        var answer = Ask(24, (dough, i) => i < 4
            ? dough with { Celsius = null, HydrationPct = 70 }
            : dough with { HydrationPct = 65 });
        Assert.Contains(new LeftOutTerm("hydration", "Hydration hardly changed from bake to bake."), answer.LeftOutTerms);
    }

    [Fact]
    public void Levels_a_tenth_apart_are_two_although_binary_says_a_little_less()
    {
        var answer = Ask(24, (dough, i) => dough with { SaltPct = i % 3 == 0 ? 1.9 : 1.8 });
        Assert.NotNull(answer.Coefficient(RiseTime.SaltTerm));
        Assert.Null(Ask(24, (dough, i) => dough with { SaltPct = i % 3 == 0 ? 1.89 : 1.8 }).Coefficient(RiseTime.SaltTerm));
    }

    [Fact]
    public void Without_a_single_cause_the_problem_says_why_for_each_and_what_to_do()
    {
        var problem = Problem(RiseTime.Ask(Dough.Bakes(3, (dough, _) => dough)));
        Assert.Equal(FitProblemKind.TooFewRows, problem.Kind);
        Assert.Equal(["rise time"], problem.Columns);
        Assert.Equal(
            "The journal can't support a single cause: 3 bakes have a rise time. sugar: It is not in the journal. "
            + "salt: It would take 8 bakes, and there are 3. hydration: It would take 7 bakes, and there are 3. "
            + "log yeast: It would take 6 bakes, and there are 3. dough temperature: It would take 5 bakes, and there are 3.",
            problem.Message);
        Assert.Equal("Log more bakes, and change the dough temperature by a few degrees from one to the next.", problem.Remedy);
    }

    [Fact]
    public void One_bake_has_and_none_is_said_as_such()
    {
        Assert.StartsWith(
            "The journal can't support a single cause: 1 bake has a rise time. ",
            Problem(RiseTime.Ask(Dough.Bakes(1, (dough, _) => dough))).Message,
            StringComparison.Ordinal);
        var none = Problem(RiseTime.Ask([]));
        Assert.Equal("No bake has a rise time that can be used.", none.Message);
        Assert.Equal("Log the rise time of each bake.", none.Remedy);
    }

    [Fact]
    public void Rise_times_that_are_all_the_same_are_a_problem_that_names_them()
    {
        var problem = Problem(RiseTime.Ask(Dough.Bakes(12, (dough, _) => dough with { RiseMin = 90 })));
        Assert.Equal(FitProblemKind.NoSpread, problem.Kind);
        Assert.Equal("The rise time is the same in all 12 bakes, so there is nothing to explain.", problem.Message);
        Assert.Equal("Log bakes that differ in their rise time.", problem.Remedy);
    }

    private static RiseTimeAnswer Ask(int count, Func<Dough, int, Dough> change) => RiseTime.Ask(Dough.Bakes(count, change)).Value;

    private static FitProblem Problem(Attempt<RiseTimeAnswer> attempt)
    {
        Assert.False(attempt.TryGet(out _, out var problem));
        return problem;
    }
}
