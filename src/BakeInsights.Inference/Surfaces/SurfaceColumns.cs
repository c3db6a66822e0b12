namespace BakeInsights.Inference;

/// <summary>The columns of a full second-order surface, and the names by which a fit finds them again.</summary>
public static class SurfaceColumns
{
    /// <summary>The factors, their squares, and the products of each two.</summary>
    /// <param name="factors">The factors' columns, of equal length.</param>
    /// <returns>k factors, k squares, then the k (k - 1) / 2 products, without a constant.</returns>
    public static IReadOnlyList<DesignColumn> Of(IReadOnlyList<DesignColumn> factors)
    {
        ArgumentNullException.ThrowIfNull(factors);
        var products =
            from i in Enumerable.Range(0, factors.Count)
            from j in Enumerable.Range(i + 1, factors.Count - i - 1)
            select Times(Product(factors[i].Name, factors[j].Name), factors[i], factors[j]);
        return [.. factors, .. factors.Select(f => Times(Square(f.Name), f, f)), .. products];
    }

    /// <summary>The name of a factor's square.</summary>
    public static string Square(string factor) => $"{factor} squared";

    /// <summary>The name of the product of two factors, the earlier of the list first.</summary>
    public static string Product(string first, string second) => $"{first} x {second}";

    private static DesignColumn Times(string name, DesignColumn first, DesignColumn second) =>
        new(name, [.. first.Values.Zip(second.Values, (a, b) => a * b)]);
}
