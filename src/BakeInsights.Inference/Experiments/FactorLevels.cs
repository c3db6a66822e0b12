namespace BakeInsights.Inference;

/// <summary>A factor of an experiment and the levels it is run at.</summary>
public sealed record FactorLevels
{
    /// <summary>Names a factor and its levels.</summary>
    /// <param name="name">The factor's name.</param>
    /// <param name="levels">Two levels or more, each once.</param>
    /// <exception cref="ArgumentException">
    /// A name is blank, there are fewer than two levels, or one is given twice.
    /// </exception>
    public FactorLevels(string name, params IReadOnlyList<string> levels)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(levels);
        if (levels.Count < 2 || levels.Any(string.IsNullOrWhiteSpace) || levels.Distinct().Count() < levels.Count)
        {
            throw new ArgumentException(
                $"Factor {name} needs two levels or more, each of its own name.", nameof(levels));
        }

        (Name, Levels) = (name, [.. levels]);
    }

    /// <summary>The factor's name.</summary>
    public string Name { get; }

    /// <summary>The levels in order.</summary>
    public IReadOnlyList<string> Levels { get; }
}
