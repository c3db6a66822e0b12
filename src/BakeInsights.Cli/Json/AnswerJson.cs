namespace BakeInsights.Cli;

/// <summary>Bakes or a term that an answer does without, and why.</summary>
/// <param name="Kind">"bakes" or "term".</param>
/// <param name="Reason">Why.</param>
/// <param name="Count">How many bakes; null when a term was left out.</param>
/// <param name="Term">The term; null when bakes were left out.</param>
/// <param name="Bakes">The bakes' names, none where the journal is too long to keep them; null when a term was left out.</param>
internal sealed record LeftOutJson(string Kind, string Reason, int? Count, string? Term, IReadOnlyList<string>? Bakes)
{
    public static IReadOnlyList<LeftOutJson> From(ModelAnswer answer) =>
    [
        .. answer.LeftOutBakes.Select(left => new LeftOutJson("bakes", left.Reason, left.Count, null, [.. left.Bakes.Select(bake => bake.Id)])),
        .. answer.LeftOutTerms.Select(left => new LeftOutJson("term", left.Reason, null, left.Name, null)),
    ];
}

/// <summary>The dough that a model counts from.</summary>
internal sealed record CentreJson(double DoughTempC, double HydrationPct)
{
    public static CentreJson OfModels { get; } = new(ModelAnswer.CentreTemperatureC, ModelAnswer.CentreHydrationPct);
}

/// <summary>A coefficient.</summary>
internal sealed record TermJson(
    string Name, string Unit, double Estimate, double StandardError, double Low, double High, double? P)
{
    public static IReadOnlyList<TermJson> From(ModelAnswer answer) => [.. answer.Terms.Select(From)];

    private static TermJson From(AnswerTerm term)
    {
        var interval = term.Coefficient.Interval(ModelAnswer.Level);
        return new(
            term.Name,
            term.Unit,
            term.Coefficient.Estimate,
            term.Coefficient.StandardError,
            interval.Low,
            interval.High,
            term.Coefficient.PValue);
    }
}

/// <summary>A number with its interval; an end that is not there is null.</summary>
internal sealed record EstimateJson(double Estimate, double? Low, double? High)
{
    public static EstimateJson? From(Estimate? estimate) =>
        estimate is null ? null : new(estimate.Value, estimate.Low, estimate.High);
}
