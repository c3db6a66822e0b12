using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>
/// Carries a model on over bakes that are not kept: the terms are those that the first bakes supported, and each
/// further bake goes into running sums.
/// </summary>
internal sealed class RunningModel
{
    private readonly FittedModel _start;
    private readonly RunningSums _sums;
    private readonly RunningRange[] _ranges;
    private readonly Measure[] _causes;
    private readonly (Func<double, double, double> Combine, int One, int Other)[] _terms;
    private readonly double[] _centres;
    private readonly double?[] _values;
    private readonly double[] _row;
    private readonly int[] _excluded;
    private readonly int[] _lacking;
    private Basis _basis;

    /// <summary>Starts from the fit of the first bakes, which are counted in.</summary>
    /// <param name="start">That fit.</param>
    /// <param name="first">All of the first bakes, those that it left out too.</param>
    public RunningModel(FittedModel start, IReadOnlyList<Bake> first)
    {
        _start = start;
        var terms = start.Selection.Terms;
        _sums = new RunningSums([FittedModel.Intercept, .. terms.Select(term => term.Name)]);
        var causes = terms.SelectMany(term => term.Causes).Distinct().ToList();
        _causes = [.. DoughSettings.Settable];
        _centres = [.. _causes.Select(measure => causes.Find(cause => cause.Measure == measure)?.Centre ?? 0)];
        _ranges = [.. _causes.Select(measure => new RunningRange(measure))];
        _terms = [.. terms.Select(term => (term.Combine, PlaceOf(term.Causes[0]), PlaceOf(term.Causes[^1])))];
        _values = new double?[_causes.Length];
        _row = new double[terms.Count + 1];
        _row[0] = 1;
        _excluded = new int[start.Question.Exclusions.Count];
        _lacking = new int[terms.Count];
        foreach (var bake in first)
        {
            Add(bake);
        }
    }

    /// <summary>Takes a bake into account.</summary>
    public void Add(Bake bake)
    {
        for (var i = 0; i < _excluded.Length; i++)
        {
            var exclusion = _start.Question.Exclusions[i];
            if (exclusion.Applies(bake))
            {
                _excluded[i]++;
                _basis = bake.RiseOutcome == RiseOutcome.Stopped ? _basis with { Stopped = _basis.Stopped + 1 } : _basis;
                return;
            }
        }

        for (var i = 0; i < _causes.Length; i++)
        {
            _values[i] = _causes[i].Of(bake);
        }

        if (!FillRow())
        {
            return;
        }

        for (var i = 0; i < _values.Length; i++)
        {
            if (_values[i] is { } value)
            {
                _ranges[i].Add(value);
            }
        }

        _basis = _basis.With(bake);
        _sums.Add(_row, _start.Question.ResponseOf(bake));
    }

    /// <summary>The model of all bakes so far.</summary>
    public Attempt<FittedModel> Finish()
    {
        IReadOnlyList<LeftOutBakes> leftOut =
        [
            .. _start.Question.Exclusions.Select((exclusion, i) => new LeftOutBakes(exclusion.Reason, []) { Count = _excluded[i] }),
            .. _start.Selection.Terms.Select((term, i) => new LeftOutBakes(TermSelection.Lacking(term), []) { Count = _lacking[i] }),
        ];
        IReadOnlyList<SettingRange> ranges = [.. _ranges.Select(range => range.Range).OfType<SettingRange>()];
        return _sums.Fit().Select(fit => _start with
        {
            Fit = fit,
            LeftOutBakes = [.. leftOut.Where(left => left.Count > 0)],
            Basis = _basis,
            Ranges = ranges,
        });
    }

    private bool FillRow()
    {
        for (var i = 0; i < _terms.Length; i++)
        {
            var (combine, one, other) = _terms[i];
            var value = _values[one] is { } first && _values[other] is { } second
                ? combine(first - _centres[one], second - _centres[other])
                : double.NaN;
            if (!double.IsFinite(value))
            {
                _lacking[i]++;
                return false;
            }

            _row[i + 1] = value;
        }

        return true;
    }

    private int PlaceOf(Cause cause) => Array.IndexOf(_causes, cause.Measure);
}
