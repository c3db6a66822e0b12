namespace BakeInsights;

/// <summary>Which settings of a bake bear out that its loaf came out large or small.</summary>
internal sealed class VolumeReasons
{
    private static readonly IReadOnlyList<Cause> Causes = [Cause.DoughTemperature, Cause.Hydration];

    private readonly LoafVolumeAnswer _answer;
    private readonly IReadOnlyDictionary<Measure, MeasureSummary> _usual;

    /// <summary>Takes the model and what is usual.</summary>
    public VolumeReasons(LoafVolumeAnswer answer, IReadOnlyList<Bake> journal)
    {
        _answer = answer;
        _usual = Causes
            .Select(cause => MeasureSummary.Of(cause.Measure, journal))
            .OfType<MeasureSummary>()
            .ToDictionary(summary => summary.Measure);
    }

    /// <summary>
    /// The settings of a bake that lie beyond the journal's quarter points and of which the model expects, with a whole
    /// interval, a loaf on that side.
    /// </summary>
    /// <param name="bake">The bake.</param>
    /// <param name="side">1 for larger, -1 for smaller.</param>
    public IReadOnlyList<LikelyReason> Of(Bake bake, int side) =>
    [
        .. Causes.Select(cause => Reason(cause, bake)).OfType<LikelyReason>()
            .Where(reason => side > 0 ? reason.Effect.Low > 0 : reason.Effect.High < 0)
            .OrderByDescending(reason => Math.Abs(reason.Effect.Value)),
    ];

    private LikelyReason? Reason(Cause cause, Bake bake)
    {
        if (cause.Measure.Of(bake) is not { } value || !_usual.TryGetValue(cause.Measure, out var usual)
            || _answer.Typical[cause.Measure] is null
            || (value >= usual.LowerQuarter && value <= usual.UpperQuarter)
            || Math.Abs(value - usual.Middle) < cause.Resolution)
        {
            return null;
        }

        var there = Row(_answer.Typical.With(cause.Measure, value));
        var middle = Row(_answer.Typical.With(cause.Measure, usual.Middle));
        var effect = _answer.Fit.Combination([.. there.Zip(middle, (one, other) => one - other)]);
        return new LikelyReason(cause.Measure, value, usual.Middle, Estimate.Of(effect));
    }

    // Columns that are no terms of the question, such as the intercept, are the same for both doughs.
    private IEnumerable<double> Row(DoughSettings settings) => _answer.Fit.Design.Names.Select(name =>
        LoafVolume.Question.Candidates.FirstOrDefault(term => term.Name == name)?.ValueFrom(measure => settings[measure]) ?? 0);
}
