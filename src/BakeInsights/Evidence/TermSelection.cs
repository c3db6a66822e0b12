namespace BakeInsights;

/// <summary>Decides which terms a journal can support, and which bakes have all that those terms need.</summary>
internal sealed class TermSelection
{
    /// <summary>
    /// A term that fewer than this share of the bakes can speak to is left out, rather than the bakes that can't.
    /// Our own choice.
    /// </summary>
    public const double LeastShareLogged = 0.5;

    /// <summary>Bakes left over after one for each coefficient, for the spread to be worth estimating. Our own choice.</summary>
    private const int LeastBakesToSpare = 3;

    private readonly List<CandidateTerm> _terms = [];
    private readonly List<LeftOutTerm> _leftOutTerms = [];
    private readonly List<LeftOutBakes> _leftOutBakes = [];

    private TermSelection(IReadOnlyList<Bake> bakes) => Bakes = bakes;

    /// <summary>The bakes that have all that the terms need.</summary>
    public IReadOnlyList<Bake> Bakes { get; private set; }

    /// <summary>The terms, the intercept not among them.</summary>
    public IReadOnlyList<CandidateTerm> Terms => _terms;

    /// <summary>The terms that can't be supported.</summary>
    public IReadOnlyList<LeftOutTerm> LeftOutTerms => _leftOutTerms;

    /// <summary>The bakes that lack something.</summary>
    public IReadOnlyList<LeftOutBakes> LeftOutBakes => _leftOutBakes;

    /// <summary>Selects among the candidates, the most important first, for these bakes.</summary>
    public static TermSelection Make(IReadOnlyList<Bake> bakes, IReadOnlyList<CandidateTerm> candidates)
    {
        var selection = new TermSelection(bakes);
        selection.KeepLogged(candidates);
        selection.KeepVaried();

        // Each term that goes frees the bakes that lacked only it, and may leave bakes in which another never changed.
        int before;
        do
        {
            before = selection.Terms.Count;
            selection.LeaveOutLacking(bakes);
            selection.LeaveOutUnaffordable();
            if (selection.Terms.Count == before)
            {
                selection.KeepVaried();
            }
        }
        while (selection.Terms.Count < before);
        return selection;
    }

    /// <summary>The reason to leave out a bake that a term has no value for.</summary>
    public static string Lacking(CandidateTerm term) => $"no {term.Causes[0].Measure.Words}";

    /// <summary>The same selection less one term, for a reason that only the fit could find.</summary>
    public TermSelection Less(string name, string reason)
    {
        var selection = new TermSelection(Bakes);
        selection._terms.AddRange(_terms.Where(term => term.Name != name));
        selection._leftOutTerms.AddRange([.. _leftOutTerms, new LeftOutTerm(name, reason)]);
        selection._leftOutBakes.AddRange(_leftOutBakes);
        return selection;
    }

    private void KeepLogged(IReadOnlyList<CandidateTerm> candidates)
    {
        foreach (var term in candidates)
        {
            var logged = Bakes.Count(bake => term.ValueOf(bake) is not null);
            if (logged < LeastShareLogged * Bakes.Count)
            {
                LeaveOut(term, logged == 0 ? "It is not in the journal." : $"It is known of only {logged} of {Bakes.Count} bakes.");
            }
            else
            {
                _terms.Add(term);
            }
        }
    }

    private void KeepVaried()
    {
        foreach (var term in _terms.ToList())
        {
            foreach (var cause in term.Causes)
            {
                var levels = cause.LevelsOf(Bakes.Select(cause.Measure.Of).Known());
                if (levels < term.LevelsNeeded)
                {
                    LeaveOut(term, levels <= 1
                        ? $"{cause.Measure.Title} hardly changed from bake to bake."
                        : $"{cause.Measure.Title} was tried at {levels} levels, and a curve takes {term.LevelsNeeded}.");
                    break;
                }
            }
        }
    }

    private void LeaveOutLacking(IReadOnlyList<Bake> bakes)
    {
        Bakes = bakes;
        _leftOutBakes.Clear();
        foreach (var term in _terms)
        {
            Bakes = new Exclusion(Lacking(term), bake => term.ValueOf(bake) is null).LeaveOut(Bakes, _leftOutBakes);
        }
    }

    private void LeaveOutUnaffordable()
    {
        if (_terms.Count > 0 && Bakes.Count < BakesNeeded(_terms.Count))
        {
            LeaveOut(_terms[^1], $"It would take {BakesNeeded(_terms.Count)} bakes, and there are {Bakes.Count}.");
        }
    }

    private void LeaveOut(CandidateTerm term, string reason)
    {
        _terms.Remove(term);
        _leftOutTerms.Add(new LeftOutTerm(term.Name, reason));
    }

    /// <summary>The fewest bakes for a model of an intercept and so many terms.</summary>
    public static int BakesNeeded(int terms) => terms + 1 + LeastBakesToSpare;
}
