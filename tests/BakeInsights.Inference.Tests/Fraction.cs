using System.Numerics;

namespace BakeInsights.Inference.Tests;

/// <summary>An exact rational number.</summary>
internal readonly record struct Fraction
{
    private readonly BigInteger _above;
    private readonly BigInteger _below;

    private Fraction(BigInteger above, BigInteger below)
    {
        var common = BigInteger.GreatestCommonDivisor(above, below) * (below.Sign < 0 ? -1 : 1);
        (_above, _below) = (above / common, below / common);
    }

    public bool IsZero => _above.IsZero;

    /// <summary>The number that a double stands for, exactly.</summary>
    public static implicit operator Fraction(double value)
    {
        var bits = BitConverter.DoubleToInt64Bits(value);
        var exponent = (int)((bits >> 52) & 0x7FF);
        var digits = (bits & 0xFFFFFFFFFFFFF) | (exponent > 0 ? 1L << 52 : 0);
        var shift = Math.Max(exponent, 1) - 1075;
        BigInteger above = value < 0 ? -digits : digits;
        return shift < 0 ? new(above, BigInteger.One << -shift) : new(above << shift, BigInteger.One);
    }

    public static Fraction operator +(Fraction a, Fraction b) =>
        new((a._above * b._below) + (b._above * a._below), a._below * b._below);

    public static Fraction operator -(Fraction a, Fraction b) =>
        new((a._above * b._below) - (b._above * a._below), a._below * b._below);

    public static Fraction operator *(Fraction a, Fraction b) => new(a._above * b._above, a._below * b._below);

    public static Fraction operator /(Fraction a, Fraction b) => new(a._above * b._below, a._below * b._above);

    /// <summary>The number as a double, off by at most the last digit.</summary>
    public double ToDouble()
    {
        if (_above.IsZero)
        {
            return 0;
        }

        // Enough binary digits before the point that truncating them costs less than a double's rounding.
        var shift = 80 - (int)(_above.GetBitLength() - _below.GetBitLength());
        var whole = shift >= 0 ? (_above << shift) / _below : _above / (_below << -shift);
        return Math.ScaleB((double)whole, -shift);
    }
}
