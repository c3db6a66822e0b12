using BakeInsights.Inference;
using Xunit;

namespace BakeInsights.Tests;

public class ColumnProblemTests
{
    private static FitProblem Problem(IReadOnlyList<Bake> bakes, ColumnForm form, string column = "kneading", params string[] blocks) =>
        Ask(bakes, form, column, blocks).Match(_ => throw new InvalidOperationException("There is an answer."), problem => problem);

    private static Attempt<ColumnAnswer> Ask(IReadOnlyList<Bake> bakes, ColumnForm form, string column = "kneading", params string[] blocks) =>
        ColumnQuestion.Ask(bakes, Measures.RiseTime, column, form, blocks);

    [Fact]
    public void A_column_that_no_bake_has_is_named_with_those_that_are_there()
    {
        var problem = Problem(OwnColumnBakes.Dozen(_ => "hand"), ColumnForm.Levels, "kneeding");
        Assert.Equal("No bake has anything in a column kneeding.", problem.Message);
        Assert.Contains("its own are kneading", problem.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_column_that_never_varied_is_said_so() => Assert.Equal(
        "Column kneading never varied: it is hand in all 12 bakes that can be used.",
        Problem(OwnColumnBakes.Dozen(_ => "hand"), ColumnForm.Levels).Message);

    [Fact]
    public void Words_are_no_line() => Assert.Equal(
        "Column kneading has no number in 12 of 12 bakes, so it can't be asked about as a line or a curve.",
        Problem(OwnColumnBakes.Dozen(i => i % 2 == 0 ? "hand" : "mixer"), ColumnForm.Line).Message);

    [Fact]
    public void Text_that_hardly_comes_back_is_no_column_of_levels() => Assert.Equal(
        "Column kneading has something of its own in 10 of 12 bakes; a comparison takes a few words or numbers that come back.",
        Problem(OwnColumnBakes.Dozen(i => i < 2 ? "hand" : $"note {i}"), ColumnForm.Levels).Message);

    [Fact]
    public void Two_numbers_make_no_curve() => Assert.Equal(
        "Column kneading was tried at 2 numbers, and a curve takes 3.",
        Problem(OwnColumnBakes.Dozen(i => i % 2 == 0 ? "5" : "10"), ColumnForm.Curve).Message);

    [Fact]
    public void A_block_that_is_the_column_again_can_not_be_told_apart()
    {
        var bakes = Enumerable.Range(0, 12).Select(i => OwnColumnBakes.Of(
            i, 90 + (i * 7 % 5), group: i % 2 == 0 ? "north" : "south", own: ("kneading", i % 2 == 0 ? "hand" : "mixer"))).ToList();
        Assert.Equal(
            "In this journal kneading moved together with group, so the two can't be told apart.",
            Problem(bakes, ColumnForm.Levels, "kneading", "group").Message);
    }

    [Fact]
    public void Too_few_bakes_are_counted() => Assert.Equal(
        "To compare kneading takes 5 bakes, and 4 can be used.",
        Problem([.. OwnColumnBakes.Dozen(i => i % 2 == 0 ? "hand" : "mixer").Take(4)], ColumnForm.Levels).Message);

    [Fact]
    public void Times_without_scatter_are_said_so()
    {
        var bakes = Enumerable.Range(0, 8).Select(i => OwnColumnBakes.Of(i, i % 2 == 0 ? 80 : 90, own: ("kneading", i % 2 == 0 ? "a" : "b"))).ToList();
        Assert.Equal(FitProblemKind.ZeroSpread, Problem(bakes, ColumnForm.Levels).Kind);
    }

    [Fact]
    public void A_level_with_one_bake_is_left_out_by_name_of_its_column()
    {
        var answer = Ask(OwnColumnBakes.Dozen(i => i == 4 ? "both" : i % 2 == 0 ? "hand" : "Mixer"), ColumnForm.Levels).Value;
        Assert.Equal(["Mixer", "hand"], answer.Levels.Select(level => level.Level));
        var left = Assert.Single(answer.LeftOutBakes);
        Assert.Equal(("a kneading that no other bake has", "B5"), (left.Reason, left.Bakes[0].Id));
    }

    [Fact]
    public void Letter_case_and_the_way_a_number_is_written_make_no_level()
    {
        Assert.Equal(2, Ask(OwnColumnBakes.Dozen(i => (i % 4) switch { 0 => "Yes", 1 => "no", 2 => "yes", _ => "NO" }), ColumnForm.Levels).Value.Levels.Count);
        Assert.Equal(
            ["-1", "2.5", "10"],
            Ask(OwnColumnBakes.Dozen(i => (i % 5) switch { 0 => "2,5", 1 => "2.5", 2 => "10", 3 => "10.0", _ => "-1" }), ColumnForm.Levels)
                .Value.Levels.Select(level => level.Level));
    }

    [Fact]
    public void Misuse_is_refused()
    {
        var bakes = OwnColumnBakes.Dozen(i => i % 2 == 0 ? "hand" : "mixer");
        Assert.Throws<ArgumentException>(() => Ask(bakes, ColumnForm.Levels, "kneading", "Kneading"));
        Assert.Throws<ArgumentException>(() => Ask(bakes, ColumnForm.Levels, "rise_min"));
        Assert.Throws<ArgumentException>(() => Ask(bakes, ColumnForm.Levels, " "));
        Assert.Throws<InvalidOperationException>(() => Ask(bakes, ColumnForm.Levels).Value.At(1));
    }
}
