namespace BakeInsights;

/// <summary>Values without the missing ones.</summary>
internal static class KnownValues
{
    /// <summary>The values that are not missing, in their order.</summary>
    public static IEnumerable<double> Known(this IEnumerable<double?> values) =>
        values.Where(value => value.HasValue).Select(value => value!.Value);
}
