using System.Diagnostics.CodeAnalysis;

namespace BakeInsights.Inference;

/// <summary>The outcome of something that data can defeat: a value, or the problem that stood in its way.</summary>
/// <remarks>A value or a problem converts to an attempt by itself, so a method just returns either.</remarks>
/// <typeparam name="T">What is asked for.</typeparam>
public sealed class Attempt<T>
    where T : notnull
{
    private readonly T? _value;
    private readonly FitProblem? _problem;

    private Attempt(T value) => _value = value;

    private Attempt(FitProblem problem) => _problem = problem;

    /// <summary>Whether there is a value.</summary>
    public bool Succeeded => _problem is null;

    /// <summary>The value.</summary>
    /// <exception cref="InvalidOperationException">There is none; the message is the problem's.</exception>
    public T Value => TryGet(out var value, out var problem)
        ? value
        : throw new InvalidOperationException(problem.Message);

    /// <summary>Gives the value and returns true, or gives the problem and returns false.</summary>
    public bool TryGet([NotNullWhen(true)] out T? value, [NotNullWhen(false)] out FitProblem? problem)
    {
        value = _value;
        problem = _problem;
        return Succeeded;
    }

    /// <summary>One answer from either outcome.</summary>
    public TResult Match<TResult>(Func<T, TResult> onValue, Func<FitProblem, TResult> onProblem)
    {
        ArgumentNullException.ThrowIfNull(onValue);
        ArgumentNullException.ThrowIfNull(onProblem);
        return TryGet(out var value, out var problem) ? onValue(value) : onProblem(problem);
    }

    /// <summary>The attempt that goes on from the value; a problem stays the same problem.</summary>
    public Attempt<TResult> Select<TResult>(Func<T, TResult> selector)
        where TResult : notnull =>
        Match<Attempt<TResult>>(value => selector(value), problem => problem);

    /// <summary>The successful attempt.</summary>
    public static implicit operator Attempt<T>(T value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return new Attempt<T>(value);
    }

    /// <summary>The failed attempt.</summary>
    public static implicit operator Attempt<T>(FitProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        return new Attempt<T>(problem);
    }
}
