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
}
