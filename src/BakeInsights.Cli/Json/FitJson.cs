using BakeInsights.Inference;

namespace BakeInsights.Cli;

/// <summary>What <c>fit --json</c> prints: a contract with the programs that read it.</summary>
internal sealed record FitJson(
    JournalJson Journal, RiseTimeJson? RiseTime, LoafVolumeJson? LoafVolume, IReadOnlyList<ProblemJson> Problems)
{
    public static FitJson From(JournalFit fit)
    {
        var problems = new List<ProblemJson>();
        return new(
            JournalJson.From(fit.Reading),
            Answer("rise_time", fit.RiseTime, RiseTimeJson.From),
            Answer("loaf_volume", fit.LoafVolume, LoafVolumeJson.From),
            problems);

        TJson? Answer<TAnswer, TJson>(string model, Attempt<TAnswer> attempt, Func<TAnswer, TJson> from)
            where TAnswer : notnull
            where TJson : class
        {
            if (attempt.TryGet(out var answer, out var problem))
            {
                return from(answer);
            }

            problems.Add(new(model, string.Join(", ", problem.Columns), problem.Message, problem.Remedy));
            return null;
        }
    }
}

/// <summary>Why a model could not be made.</summary>
internal sealed record ProblemJson(string Model, string Column, string Message, string Remedy);

/// <summary>The answer about rise time.</summary>
internal sealed record RiseTimeJson(
    int Used,
    IReadOnlyList<LeftOutJson> LeftOut,
    string Model,
    CentreJson Centre,
    IReadOnlyList<TermJson> Terms,
    double ResidualSd,
    EstimateJson? Q10,
    IReadOnlyList<AnswerCheck> Checks,
    IReadOnlyList<string> Caveats)
{
    public static RiseTimeJson From(RiseTimeAnswer answer) => new(
        answer.UsedCount,
        LeftOutJson.From(answer),
        answer.Model,
        CentreJson.OfModels,
        TermJson.From(answer),
        answer.ResidualSd,
        EstimateJson.From(answer.Q10),
        answer.Checks,
        answer.Caveats);
}

/// <summary>The answer about loaf volume.</summary>
internal sealed record LoafVolumeJson(
    int Used,
    IReadOnlyList<LeftOutJson> LeftOut,
    string Model,
    CentreJson Centre,
    IReadOnlyList<TermJson> Terms,
    double ResidualSd,
    double RSquared,
    OptimumJson? Optimum,
    IReadOnlyList<AnswerCheck> Checks,
    IReadOnlyList<string> Caveats)
{
    public static LoafVolumeJson From(LoafVolumeAnswer answer) => new(
        answer.UsedCount,
        LeftOutJson.From(answer),
        answer.Model,
        CentreJson.OfModels,
        TermJson.From(answer),
        answer.ResidualSd,
        answer.RSquared,
        EstimateJson.From(answer.BestHydration) is { } best ? new(best) : null,
        answer.Checks,
        answer.Caveats);
}

/// <summary>The settings that give the most.</summary>
internal sealed record OptimumJson(EstimateJson HydrationPct);
