using Xunit;

namespace BakeInsights.Inference.Tests;

public class AttemptTests
{
    private static readonly FitProblem Problem = new(FitProblemKind.NoSpread, ["y"], "It is flat.", "Vary it.");

    [Fact]
    public void Success_gives_the_value_and_no_problem()
    {
        Attempt<int> attempt = 7;

        Assert.True(attempt.Succeeded);
        Assert.True(attempt.TryGet(out var value, out var problem));
        Assert.Equal((7, null), (value, problem));
        Assert.Equal(7, attempt.Value);
        Assert.Equal("seven", attempt.Match(v => v == 7 ? "seven" : "other", _ => "problem"));
        Assert.Equal(14.5, attempt.Select(v => v + 7.5).Value);
    }

    [Fact]
    public void Failure_gives_the_problem_and_keeps_it()
    {
        Attempt<int> attempt = Problem;

        Assert.False(attempt.Succeeded);
        Assert.False(attempt.TryGet(out _, out var problem));
        Assert.Same(Problem, problem);
        Assert.Equal("Vary it.", attempt.Match(_ => "value", p => p.Remedy));
        Assert.Same(Problem, attempt.Select(v => v + 1.5).Match(_ => null!, p => p));
    }

    [Fact]
    public void Asking_a_failure_for_its_value_throws_the_message()
    {
        Attempt<string> attempt = Problem;

        var error = Assert.Throws<InvalidOperationException>(() => attempt.Value);

        Assert.Equal("It is flat.", error.Message);
    }
}
