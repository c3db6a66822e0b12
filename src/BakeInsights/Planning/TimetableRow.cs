namespace BakeInsights;

/// <summary>One thing to do and when, in minutes after the day's first minute (midnight): 1,500 is 1:00 the next day.</summary>
/// <param name="What">What to do.</param>
/// <param name="UsualMin">When to expect it.</param>
/// <param name="SoonestMin">The soonest that has to be reckoned with.</param>
/// <param name="LatestMin">The latest that has to be reckoned with.</param>
public sealed record TimetableRow(string What, double UsualMin, double SoonestMin, double LatestMin);
