using System.Numerics;

namespace BakeInsights.Inference;

/// <summary>A number in doubled precision: the exact sum of two doubles, about 32 decimal digits.</summary>
/// <remarks>
/// The low part is at most half a unit in the last place of the high part. Sum without error: Knuth (1998), The Art of
/// Computer Programming 2, 3rd ed., 4.2.2, theorem B. Product, quotient and root: Dekker (1971), A floating-point
/// technique for extending the available precision, Numerische Mathematik 18, 224-242, the error of a product taken
/// from the fused multiply-add.
/// </remarks>
/// <param name="High">The number rounded to a double.</param>
/// <param name="Low">What the rounding left.</param>
internal readonly record struct Doubled(double High, double Low) :
    IAdditionOperators<Doubled, Doubled, Doubled>,
    ISubtractionOperators<Doubled, Doubled, Doubled>,
    IMultiplyOperators<Doubled, Doubled, Doubled>,
    IDivisionOperators<Doubled, Doubled, Doubled>
{
    public static implicit operator Doubled(double value) => new(value, 0);

    public static explicit operator double(Doubled value) => value.High;

    public static Doubled operator -(Doubled a) => new(-a.High, -a.Low);

    public static Doubled operator +(Doubled a, Doubled b)
    {
        var high = Sum(a.High, b.High);
        var low = Sum(a.Low, b.Low);
        var once = Renormalised(high.High, high.Low + low.High);
        return Renormalised(once.High, once.Low + low.Low);
    }

    public static Doubled operator -(Doubled a, Doubled b) => a + -b;

    public static Doubled operator *(Doubled a, Doubled b)
    {
        var product = Product(a.High, b.High);
        return Renormalised(product.High, product.Low + ((a.High * b.Low) + (a.Low * b.High)));
    }

    public static Doubled operator /(Doubled a, Doubled b)
    {
        var quotient = a.High / b.High;
        var remainder = a - (b * quotient);
        var next = remainder.High / b.High;
        remainder -= b * next;
        return Renormalised(quotient, next) + (remainder.High / b.High);
    }

    /// <summary>The square root; of a negative number or zero it is zero.</summary>
    public static Doubled Sqrt(Doubled value)
    {
        if (value.High <= 0)
        {
            return 0;
        }

        // One step of Newton's iteration from the double root doubles its digits.
        var root = Math.Sqrt(value.High);
        return Renormalised(root, (value - Product(root, root)).High / (2 * root));
    }

    /// <summary>The exact sum of two doubles.</summary>
    public static Doubled Sum(double a, double b)
    {
        var sum = a + b;
        var fromB = sum - a;
        return new Doubled(sum, (a - (sum - fromB)) + (b - fromB));
    }

    /// <summary>The exact product of two doubles.</summary>
    public static Doubled Product(double a, double b)
    {
        var product = a * b;
        return new Doubled(product, Math.FusedMultiplyAdd(a, b, -product));
    }

    /// <summary>The sum of two doubles of which the first is the larger in size.</summary>
    private static Doubled Renormalised(double high, double low)
    {
        var sum = high + low;
        return new Doubled(sum, low - (sum - high));
    }
}
