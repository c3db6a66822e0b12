namespace BakeInsights;

/// <summary>Numbers that one moved decimal point would make usual.</summary>
internal static class DecimalSlip
{
    // Nearest first: a point is sooner misplaced by one place than by two.
    private static readonly double[] Moves = [0.1, 10, 0.01, 100];

    /// <summary>The shortest move of the point that makes a number usual; null when none does.</summary>
    /// <param name="isUsual">Whether the number times this is usual.</param>
    public static double? Of(Func<double, bool> isUsual) => Moves.Where(isUsual).Cast<double?>().FirstOrDefault();

    /// <summary>The shortest move of the point that brings a number into a range; null when none does.</summary>
    public static double? Of(double value, double low, double high) => Of(move => value * move >= low && value * move <= high);
}
