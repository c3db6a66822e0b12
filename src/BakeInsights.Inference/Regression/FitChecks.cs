using System.Numerics;
using System.Runtime.InteropServices;

namespace BakeInsights.Inference;

/// <summary>What can be said against a fit before it is made.</summary>
internal static class FitChecks
{
    /// <summary>The first problem of the data themselves; null if there is none.</summary>
    public static FitProblem? Find(Design design, DesignColumn response, DesignColumn? weights)
    {
        foreach (var column in design.Columns.Append(response))
        {
            if (Unusable(column) is { } unusable)
            {
                return unusable;
            }
        }

        return (weights is null ? null : Unusable(weights) ?? NotPositive(weights))
            ?? FitProblems.TooFewRows(design.Names, design.RowCount) ?? Zero(design) ?? NoSpread(design, response);
    }

    private static FitProblem? Unusable(DesignColumn column)
    {
        if (LargestMagnitudeOf(column.Span) is { } largest)
        {
            return FitProblems.OutOfRange(column.Name, largest);
        }

        var rows = Enumerable.Range(0, column.Values.Count).Where(i => !double.IsFinite(column.Values[i])).ToArray();
        return FitProblems.Missing(column.Name, rows.Length, column.Values.Count, rows[0]);
    }

    /// <summary>The largest size among the numbers; null if one isn't finite.</summary>
    private static double? LargestMagnitudeOf(ReadOnlySpan<double> values)
    {
        var packs = MemoryMarshal.Cast<double, Vector<double>>(values);
        var (largest, zeros) = (Vector<double>.Zero, Vector<double>.Zero);
        foreach (var pack in packs)
        {
            largest = Vector.Max(largest, Vector.Abs(pack));

            // Zero times a number is zero only if the number is finite.
            zeros += pack * Vector<double>.Zero;
        }

        var (single, zero) = (0.0, Vector.Sum(zeros));
        for (var lane = 0; lane < Vector<double>.Count; lane++)
        {
            single = Math.Max(single, largest[lane]);
        }

        foreach (var value in values[(packs.Length * Vector<double>.Count)..])
        {
            single = Math.Max(single, Math.Abs(value));
            zero += value * 0;
        }

        return zero == 0 ? single : null;
    }

    private static FitProblem? NotPositive(DesignColumn weights)
    {
        var row = weights.Values.ToList().FindIndex(weight => weight <= 0);
        return row < 0 ? null : new FitProblem(
            FitProblemKind.OutOfRange,
            [weights.Name],
            $"The weight of row {row + 1} is not above zero.",
            "Leave rows of no weight out.");
    }

    private static FitProblem? Zero(Design design)
    {
        var zero = design.Columns.FirstOrDefault(column => !column.Span.ContainsAnyExcept(0.0));
        return zero is null ? null : FitProblems.Zero(zero.Name);
    }

    private static FitProblem? NoSpread(Design design, DesignColumn response)
    {
        var none = design.HasConstant ? response.Values[0] : 0;
        return response.Span.ContainsAnyExcept(none) ? null : FitProblems.NoSpread(response.Name);
    }
}
