using System.Globalization;

namespace BakeInsights.Cli;

/// <summary>A range that a person writes behind an option: 60-72, or one number for something that stays.</summary>
internal static class LimitsOption
{
    /// <summary>Reads the range.</summary>
    /// <param name="name">The option's name, for what is said if it can't be read.</param>
    /// <param name="text">What was written; null if nothing was.</param>
    /// <param name="least">The least that is possible.</param>
    /// <param name="most">The most that is possible.</param>
    /// <param name="example">A range that makes sense.</param>
    /// <exception cref="CommandFailure">It is no range, or not one that can be baked.</exception>
    public static SettingLimits? Read(string name, string? text, double least, double most, string example)
    {
        if (text is null)
        {
            return null;
        }

        double[] ends = [.. text.Split('-').Select(part => double.TryParse(part, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) ? value : double.NaN)];
        return ends.Length is 1 or 2 && Array.TrueForAll(ends, end => end >= least && end <= most) && ends[0] <= ends[^1]
            ? new SettingLimits(ends[0], ends[^1])
            : throw new CommandFailure(FormattableString.Invariant(
                $"--{name} {text} can't be baked: write the lower and the higher number, from {least:0.#} to {most:0.#}, such as {example}."));
    }
}
