namespace BakeInsights.Inference;

/// <summary>Turns group labels into indicator columns, so that a fit can hold blocks or treatments.</summary>
public static class GroupColumns
{
    /// <summary>Columns named "<paramref name="name"/> = label", 1 in the rows of that label and 0 elsewhere.</summary>
    /// <param name="name">The name of the grouping, such as "oven".</param>
    /// <param name="labels">The label of each row.</param>
    /// <param name="coding">Which groups get a column.</param>
    /// <returns>
    /// The columns in ordinal order of the labels, so that the order of the rows doesn't matter; none if there is one
    /// group and the coding is <see cref="GroupCoding.AgainstFirst"/>.
    /// </returns>
    /// <exception cref="ArgumentException">The name or a label is blank.</exception>
    public static IReadOnlyList<DesignColumn> From(string name, IReadOnlyList<string> labels, GroupCoding coding)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(labels);
        if (labels.Any(string.IsNullOrWhiteSpace))
        {
            throw new ArgumentException(
                $"Every row needs a label of {name}: leave unlabelled rows out.", nameof(labels));
        }

        var withoutColumn = coding == GroupCoding.AgainstFirst ? 1 : 0;
        return
        [
            .. labels.Distinct().Order(StringComparer.Ordinal).Skip(withoutColumn).Select(group =>
                new DesignColumn($"{name} = {group}", labels.Select(label => label == group ? 1.0 : 0.0).ToArray())),
        ];
    }

    /// <summary>How far one group lies from another by a fit.</summary>
    /// <param name="fit">A fit on columns from <see cref="From"/>, among others.</param>
    /// <param name="name">The name of the grouping.</param>
    /// <param name="group">The label of the group.</param>
    /// <param name="other">The label of the group it is compared with.</param>
    /// <returns>The group's level less the other's, other columns being equal.</returns>
    /// <exception cref="ArgumentException">The labels are the same, or the fit has no such groups.</exception>
    public static Term Difference(LeastSquaresFit fit, string name, string group, string other)
    {
        ArgumentNullException.ThrowIfNull(fit);
        var weights = new double[fit.Terms.Count];
        foreach (var (label, sign) in new[] { (group, 1), (other, -1) })
        {
            var column = fit.Design.Names.ToList().IndexOf($"{name} = {label}");
            if (column >= 0)
            {
                weights[column] = sign;
            }
            else if (!IsFirst(fit.Design, name, label))
            {
                throw new ArgumentException($"The fit has no group {label} of {name}.", nameof(fit));
            }
        }

        return group == other
            ? throw new ArgumentException("A group doesn't differ from itself.", nameof(other))
            : fit.Combination(weights, $"{name}: {group} less {other}");
    }

    /// <summary>Whether a label can be that of the group without a column: it then comes before all others.</summary>
    private static bool IsFirst(Design design, string name, string label)
    {
        var labels = design.Names.Where(column => column.StartsWith($"{name} = ", StringComparison.Ordinal))
            .Select(column => column[$"{name} = ".Length..]).ToArray();
        return labels.Length > 0 && labels.All(other => string.CompareOrdinal(label, other) < 0);
    }
}
