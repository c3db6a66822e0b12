using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>
/// What the bakes say of the dough's temperature by themselves. A cause that they can't tell is held at what physics says
/// of it, and the less important ones are given up first.
/// </summary>
internal sealed class JournalAlone
{
    /// <summary>A cause that changed by less than this, in °C or min, is not asked of the journal: a probe reads to 1 °C. Common practice.</summary>
    private const double LeastChange = 1;

    private readonly DoughTemperatureBakes _bakes;
    private readonly Dictionary<DoughCause, PriorTerm> _terms = [];
    private readonly Dictionary<DoughCause, string> _why = [];

    public JournalAlone(DoughTemperatureBakes bakes)
    {
        _bakes = bakes;
        List<DoughCause> asked = [];
        foreach (var cause in DoughCause.All)
        {
            if (WhyNotAsked(cause) is { } reason)
            {
                _why[cause] = reason;
            }
            else
            {
                asked.Add(cause);
            }
        }

        Ask(asked);
    }

    /// <summary>What the bakes say of a cause, or null.</summary>
    public PriorTerm? Of(DoughCause cause) => _terms.GetValueOrDefault(cause);

    /// <summary>Why they say nothing; empty if they do.</summary>
    public string WhyNot(DoughCause cause) => _why.GetValueOrDefault(cause, "");

    /// <summary>
    /// The probability of what the bakes say if physics is right; null where they say nothing. Nor is it known of the
    /// warming while another cause is held at what physics says, for that may be off too.
    /// </summary>
    public double? ConflictOf(DoughCause cause) =>
        cause == DoughCause.Warming && _why.Count > 0 ? null : Of(cause)?.Conflict?.PValue;

    private string? WhyNotAsked(DoughCause cause)
    {
        if (_bakes.Kept.Count == 0)
        {
            return "There is no bake.";
        }

        if (cause == DoughCause.Warming)
        {
            return null;
        }

        if (cause == DoughCause.Mixing && !_bakes.CountsMixing)
        {
            return _bakes.WhyNoMixing;
        }

        var values = _bakes.ValuesOf(cause);
        return values.Max() - values.Min() < LeastChange ? $"{cause.Title} hardly changed from bake to bake." : null;
    }

    private void Ask(List<DoughCause> asked)
    {
        while (asked.Count > 0)
        {
            if (Fit(asked).TryGet(out var fit, out var problem))
            {
                foreach (var (cause, term) in asked.Zip(fit.Coefficients))
                {
                    _terms[cause] = term;
                }

                return;
            }

            var given = problem.Kind switch
            {
                FitProblemKind.DependentColumn or FitProblemKind.TooFewRows => asked[^1],
                _ => null,
            };
            foreach (var cause in asked.Where(cause => given is null || cause == given))
            {
                _why[cause] = Reason(problem.Kind, cause);
            }

            asked.RemoveAll(_why.ContainsKey);
        }
    }

    private string Reason(FitProblemKind kind, DoughCause cause) => kind switch
    {
        FitProblemKind.DependentColumn => $"{cause.Title} moved together with the others, so the journal by itself can't tell its part.",
        FitProblemKind.TooFewRows => (_bakes.Kept.Count == 1 ? "One bake is" : $"{_bakes.Kept.Count} bakes are") + " too few to tell its part by themselves.",
        FitProblemKind.NoSpread => "The dough temperature was the same in every bake.",
        _ => "The bakes lie on a line to the last digit, so there is no scatter to judge it by.",
    };

    private Attempt<PriorFit> Fit(List<DoughCause> asked)
    {
        var rows = _bakes.Kept.Select(_bakes.Row).ToList();
        double At(double[] row, DoughCause cause) => row[cause.Place];
        var held = DoughCause.All.Except(asked).ToList();
        return PriorRegression.Fit(
            new Design(asked.Select(cause => new DesignColumn(cause.Name, [.. rows.Select(row => At(row, cause))]))),
            [
                .. _bakes.Kept.Zip(rows, (bake, row) =>
                    KitchenDoughTemperature.ResponseOf(bake) - held.Sum(cause => cause.Prior.Mean * At(row, cause))),
            ],
            [.. asked.Select(cause => cause.Prior)]);
    }
}
