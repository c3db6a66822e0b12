using System.Numerics;

namespace BakeInsights.Inference;

/// <summary>
/// A stream of random numbers that depends on a seed and a number alone, so that each replicate draws the same numbers
/// on whatever core and in whatever order it is computed.
/// </summary>
/// <remarks>
/// xoshiro256**: Blackman and Vigna (2021), Scrambled linear pseudorandom number generators, ACM Transactions on
/// Mathematical Software 47(4); its state is filled by SplitMix64: Steele, Lea and Flood (2014), Fast splittable
/// pseudorandom number generators, OOPSLA.
/// </remarks>
internal struct SeededStream
{
    private ulong _a, _b, _c, _d;

    /// <summary>Starts the stream of a number under a seed.</summary>
    public SeededStream(int seed, int number)
    {
        var state = Mix((uint)seed + 0x9E3779B97F4A7C15UL) ^ Mix((uint)number + 0xD1B54A32D192ED03UL);
        (_a, _b, _c, _d) = (Next(ref state), Next(ref state), Next(ref state), Next(ref state));
    }

    /// <summary>A whole number from 0 up to but not including a bound, each equally likely.</summary>
    /// <remarks>Lemire (2019), Fast random integer generation in an interval, ACM TOMACS 29(1).</remarks>
    public int Below(int bound)
    {
        var range = (uint)bound;
        var product = (Bits() >> 32) * range;
        if ((uint)product < range)
        {
            var threshold = (0 - range) % range;
            while ((uint)product < threshold)
            {
                product = (Bits() >> 32) * range;
            }
        }

        return (int)(product >> 32);
    }

    /// <summary>Puts values into a random order, each order equally likely (Fisher and Yates).</summary>
    public void Shuffle(Span<int> values)
    {
        for (var i = values.Length - 1; i > 0; i--)
        {
            var j = Below(i + 1);
            (values[i], values[j]) = (values[j], values[i]);
        }
    }

    private ulong Bits()
    {
        var result = BitOperations.RotateLeft(_b * 5, 7) * 9;
        var shifted = _b << 17;
        _c ^= _a;
        _d ^= _b;
        _b ^= _c;
        _a ^= _d;
        _c ^= shifted;
        _d = BitOperations.RotateLeft(_d, 45);
        return result;
    }

    private static ulong Next(ref ulong state)
    {
        state += 0x9E3779B97F4A7C15UL;
        return Mix(state);
    }

    private static ulong Mix(ulong value)
    {
        value = (value ^ (value >> 30)) * 0xBF58476D1CE4E5B9UL;
        value = (value ^ (value >> 27)) * 0x94D049BB133111EBUL;
        return value ^ (value >> 31);
    }
}
