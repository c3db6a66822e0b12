namespace BakeInsights;

/// <summary>Remembers the names of the bakes read, and where each stands, to find one that comes twice.</summary>
/// <remarks>
/// Kept are 64-bit hashes, not names: of a million names two different ones share a hash about once in 37 million
/// journals. Past a million, only neighbours are compared, which finds every repeat in a journal that is sorted.
/// </remarks>
internal sealed class BakeIds
{
    /// <summary>Up to this many names all are remembered.</summary>
    public const int Remembered = 1_000_000;

    private readonly List<string> _files = [];
    private Dictionary<ulong, (int File, int Line)>? _seen = [];
    private ulong _last;
    private (int File, int Line) _lastPlace;

    /// <summary>Whether every repeat is found, and not only that of a neighbour.</summary>
    public bool AreAllRemembered => _seen is not null;

    /// <summary>Where this name stood before, or null when it is new; then it is remembered.</summary>
    public SourceLine? FindOrAdd(ReadOnlySpan<byte> id, string file, long line)
    {
        if (_files.Count == 0 || _files[^1] != file)
        {
            _files.Add(file);
        }

        var place = (_files.Count - 1, (int)line);
        var hash = Hash(id);
        if (_seen is null)
        {
            var isRepeat = hash == _last;
            var before = _lastPlace;
            (_last, _lastPlace) = (hash, place);
            return isRepeat ? At(before) : null;
        }

        if (!_seen.TryAdd(hash, place))
        {
            return At(_seen[hash]);
        }

        if (_seen.Count >= Remembered)
        {
            _seen = null;
            (_last, _lastPlace) = (hash, place);
        }

        return null;
    }

    private SourceLine At((int File, int Line) place) => new(_files[place.File], place.Line);

    // Fowler, Noll and Vo's hash (FNV-1a, 64 bits), and a last stirring so that near names lie far apart.
    private static ulong Hash(ReadOnlySpan<byte> id)
    {
        var hash = 14_695_981_039_346_656_037;
        foreach (var octet in id)
        {
            hash = (hash ^ octet) * 1_099_511_628_211;
        }

        hash ^= hash >> 32;
        return hash * 0x9E37_79B9_7F4A_7C15;
    }
}
