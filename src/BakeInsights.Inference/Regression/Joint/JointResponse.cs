namespace BakeInsights.Inference;

/// <summary>One of several responses that are seen together, with a model of its own.</summary>
public sealed record JointResponse
{
    /// <summary>States a response.</summary>
    /// <param name="name">What to call it.</param>
    /// <param name="design">Its columns; a constant one among them if an intercept is wanted.</param>
    /// <param name="values">The response by row of the design.</param>
    /// <param name="units">
    /// To which unit each row belongs, from 0: rows of two responses that are of one unit have residuals that may go together.
    /// </param>
    /// <exception cref="ArgumentException">The lists differ in length, or a unit is below 0 or named twice.</exception>
    public JointResponse(string name, Design design, IReadOnlyList<double> values, IReadOnlyList<int> units)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(values);
        ArgumentNullException.ThrowIfNull(units);
        if (values.Count != design.RowCount || units.Count != design.RowCount)
        {
            throw new ArgumentException($"The design has {design.RowCount} rows, {values.Count} values and {units.Count} units.", nameof(values));
        }

        if (units.Any(unit => unit < 0) || units.Distinct().Count() < units.Count)
        {
            throw new ArgumentException("Each row is of one unit, counted from 0.", nameof(units));
        }

        (Name, Design, Values, Units) = (name, design, [.. values], [.. units]);
    }

    /// <summary>What it is called.</summary>
    public string Name { get; }

    /// <summary>Its columns.</summary>
    public Design Design { get; }

    /// <summary>The response by row.</summary>
    public IReadOnlyList<double> Values { get; }

    /// <summary>The unit of each row.</summary>
    public IReadOnlyList<int> Units { get; }

    /// <summary>
    /// What was known of some coefficients before, in groups; coefficients in none have no prior. The standard deviations
    /// of a group are right up to one factor that isn't known and is about 1: where the data show no more of the group than
    /// its means, it becomes small and draws them there; where they contradict the means, it becomes large.
    /// </summary>
    public IReadOnlyList<IReadOnlyList<NormalPrior>> Priors { get; init; } = [];

    /// <summary>
    /// Columns whose value in a new row is not set but happens, such as the level of whoever bakes: a new row takes it from
    /// a row of the data, each as likely as the others.
    /// </summary>
    public IReadOnlyList<string> Varying { get; init; } = [];
}
