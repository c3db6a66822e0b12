namespace BakeInsights;

/// <summary>
/// Collects the remarks of a reading. Past a size every code is counted, and only its first remarks are kept, so that
/// a file in which every row is wrong doesn't fill the memory.
/// </summary>
internal sealed class NoticeLog
{
    /// <summary>Up to this many remarks all are kept.</summary>
    public const int KeptInFull = 50_000;

    /// <summary>Of each code this many are kept past that.</summary>
    public const int KeptOfEachCode = 20;

    // A line without an end would otherwise be kept whole, once for each remark on it.
    private const int LongestText = 500;

    private readonly List<Notice> _notices = [];
    private readonly SortedDictionary<string, int> _counts = new(StringComparer.Ordinal);
    private bool _isFull;

    /// <summary>The remarks kept, in the order of the files and their lines.</summary>
    public IReadOnlyList<Notice> Notices => _notices;

    /// <summary>How many remarks of each code there were, kept or not.</summary>
    public IReadOnlyDictionary<string, int> Counts => _counts;

    public void Add(Notice notice)
    {
        var count = _counts.GetValueOrDefault(notice.Code) + 1;
        _counts[notice.Code] = count;
        if (_isFull && count > KeptOfEachCode)
        {
            return;
        }

        _notices.Add(notice.Text.Length <= LongestText ? notice : notice with { Text = notice.Text[..LongestText] + "…" });
        if (_notices.Count > KeptInFull)
        {
            KeepFirstOfEachCode();
        }
    }

    /// <summary>Adds a remark in the place of one that says less of the same cell; null where there is none.</summary>
    public void Replace(Notice? lesser, Notice better)
    {
        if (lesser is not null && _notices.Remove(lesser) && --_counts[lesser.Code] == 0)
        {
            _counts.Remove(lesser.Code);
        }

        Add(better);
    }

    /// <summary>From now on, and of those so far, only the first remarks of each code are kept.</summary>
    public void KeepFirstOfEachCode()
    {
        if (!_isFull)
        {
            _isFull = true;
            Thin();
        }
    }

    // Apart from its only caller, which is called for every bake: what the closure captures is made on entry.
    private void Thin()
    {
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        _notices.RemoveAll(notice => (seen[notice.Code] = seen.GetValueOrDefault(notice.Code) + 1) > KeptOfEachCode);
        _notices.TrimExcess();
    }
}
