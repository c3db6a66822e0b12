namespace BakeInsights.Inference;

/// <summary>How many resamples to draw, and from which seed. The answer depends on both and on nothing else.</summary>
public sealed record Resamples
{
    /// <summary>
    /// The fewest resamples taken: 95 % intervals need 1,000 or more for ends that are steady. Efron and Tibshirani
    /// (1993), An Introduction to the Bootstrap, section 14.3; this floor only keeps the arithmetic defined.
    /// </summary>
    private const int Fewest = 99;

    /// <summary>States the resamples.</summary>
    /// <param name="count">How many, at least 99; 10,000 for a final answer.</param>
    /// <param name="seed">The seed.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are fewer than 99.</exception>
    public Resamples(int count, int seed)
    {
        if (count < Fewest)
        {
            throw new ArgumentOutOfRangeException(nameof(count), count, $"Take at least {Fewest} resamples.");
        }

        (Count, Seed) = (count, seed);
    }

    /// <summary>How many.</summary>
    public int Count { get; }

    /// <summary>The seed.</summary>
    public int Seed { get; }

    /// <summary>The most cores to use; -1, for all there are, unless set. The answer doesn't depend on it.</summary>
    public int Cores { get; init; } = -1;

    /// <summary>Runs each resample by its number, on as many cores as allowed.</summary>
    internal void ForEach(Action<int, int> fromTo)
    {
        // Chunks of this size keep every core busy to the end and cost no time by themselves. Common practice.
        const int Chunk = 128;
        var chunks = (Count + Chunk - 1) / Chunk;
        Parallel.For(0, chunks, new ParallelOptions { MaxDegreeOfParallelism = Cores }, chunk =>
            fromTo(chunk * Chunk, Math.Min((chunk + 1) * Chunk, Count)));
    }
}
