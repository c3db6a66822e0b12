namespace BakeInsights.Inference;

/// <summary>What every fit answers, whatever its method: its terms, one summary of the whole, and its rows.</summary>
public interface IFit
{
    /// <summary>The coefficients, in the order of the model.</summary>
    IReadOnlyList<Term> Terms { get; }

    /// <summary>The fit as a whole.</summary>
    FitSummary Summary { get; }

    /// <summary>What became of each row of the data, in their order.</summary>
    IReadOnlyList<FitRow> Rows { get; }
}
