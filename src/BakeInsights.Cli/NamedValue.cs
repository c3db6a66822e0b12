namespace BakeInsights.Cli;

/// <summary>What stands behind a <c>--set</c>.</summary>
/// <param name="Name">The name before the equals sign.</param>
/// <param name="Value">All behind it.</param>
internal sealed record NamedValue(string Name, string Value)
{
    /// <summary>Takes "name=value" apart.</summary>
    /// <exception cref="CommandFailure">It has no name or no equals sign.</exception>
    public static NamedValue Of(string pair)
    {
        var sign = pair.IndexOf('=', StringComparison.Ordinal);
        return sign < 1
            ? throw new CommandFailure($"--set {pair} has no value: write --set name=value.")
            : new(pair[..sign].Trim(), pair[(sign + 1)..]);
    }
}
