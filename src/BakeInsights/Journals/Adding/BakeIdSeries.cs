using System.Globalization;

namespace BakeInsights;

/// <summary>Finds the next name in a journal whose bakes are numbered: after ML-46 comes ML-47.</summary>
internal sealed class BakeIdSeries
{
    private const int MostDigits = 15;

    private static readonly string[] Days = ["yyyy-MM-dd", "yyyyMMdd", "yyyy.MM.dd", "yyyy/MM/dd"];

    private readonly Dictionary<(string Before, string After), long> _highest = [];
    private (string Before, string After, int Width)? _last;

    /// <summary>The name after the last numbered one; null when the last bake has no number in its name.</summary>
    public string? Next => _last is { } last
        ? last.Before
            + (_highest[(last.Before, last.After)] + 1).ToString(CultureInfo.InvariantCulture).PadLeft(last.Width, '0')
            + last.After
        : null;

    /// <summary>Takes the name of one more bake.</summary>
    public void Add(string id)
    {
        _last = null;
        var end = id.AsSpan().LastIndexOfAnyInRange('0', '9') + 1;
        var start = id.AsSpan(0, end).LastIndexOfAnyExceptInRange('0', '9') + 1;
        if (end == 0 || end - start > MostDigits || EndsInDay(id[..end]))
        {
            return;
        }

        var key = (id[..start], id[end..]);
        var number = long.Parse(id.AsSpan(start, end - start), CultureInfo.InvariantCulture);
        _highest[key] = Math.Max(number, _highest.GetValueOrDefault(key));
        _last = (key.Item1, key.Item2, end - start);
    }

    // Counting on from 2026-10-31 would give a day that there is not.
    private static bool EndsInDay(string id) => Days.Any(format => id.Length >= format.Length
        && DateOnly.TryParseExact(id[^format.Length..], format, CultureInfo.InvariantCulture, DateTimeStyles.None, out _));
}
