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

    private const int FirstCapacity = 1 << 17;

    // One growth, from what a journal kept in memory needs to what is ever needed: growing by doubling would hold up to
    // three times as much meanwhile.
    private const int LastCapacity = Remembered / 3 * 4;
    private const double FullestShare = 0.75;

    private readonly List<(string Name, long LinesBefore)> _files = [];

    // Line numbers are kept apart from the hashes: a pair of them would be padded to twice the size.
    private ulong[] _hashes = new ulong[FirstCapacity];
    private uint[] _lines = new uint[FirstCapacity];
    private int _count;
    private ulong _last;
    private long _lastLine;
    private long _line;

    /// <summary>Whether so far every repeat was found, and not only that of a neighbour.</summary>
    public bool AreAllRemembered => _count < Remembered;

    /// <summary>Where this name stood before, or null when it is new; then it is remembered.</summary>
    public SourceLine? FindOrAdd(ReadOnlySpan<byte> id, string file, long line)
    {
        if (_files.Count == 0 || _files[^1].Name != file)
        {
            _files.Add((file, _line));
        }

        _line = _files[^1].LinesBefore + line;
        var hash = Hash(id);
        if (!AreAllRemembered)
        {
            var before = hash == _last ? At(_lastLine) : null;
            (_last, _lastLine) = (hash, _line);
            return before;
        }

        var slot = SlotOf(_hashes, hash);
        if (_hashes[slot] == hash)
        {
            return At(_lines[slot]);
        }

        (_hashes[slot], _lines[slot]) = (hash, (uint)_line);
        (_last, _lastLine) = (hash, _line);
        if (++_count == Remembered)
        {
            (_hashes, _lines) = ([], []);
        }
        else if (_hashes.Length < LastCapacity && _count > FullestShare * _hashes.Length)
        {
            Grow();
        }

        return null;
    }

    // Lines are counted through all files.
    private SourceLine At(long line)
    {
        var (name, before) = _files.FindLast(file => file.LinesBefore < line);
        return new(name, line - before);
    }

    private void Grow()
    {
        var hashes = new ulong[LastCapacity];
        var lines = new uint[LastCapacity];
        for (var i = 0; i < _hashes.Length; i++)
        {
            if (_hashes[i] != 0)
            {
                var slot = SlotOf(hashes, _hashes[i]);
                (hashes[slot], lines[slot]) = (_hashes[i], _lines[i]);
            }
        }

        (_hashes, _lines) = (hashes, lines);
    }

    // Open addressing, one step at a time, from the place that the hash has as a share of all; a slot that holds 0 is free.
    private static int SlotOf(ulong[] hashes, ulong hash)
    {
        var slot = (int)Math.BigMul(hash, (ulong)hashes.Length, out _);
        while (hashes[slot] != 0 && hashes[slot] != hash)
        {
            slot = slot + 1 == hashes.Length ? 0 : slot + 1;
        }

        return slot;
    }

    // Fowler, Noll and Vo's hash (FNV-1a, 64 bits), and a last stirring so that near names lie far apart; never 0.
    private static ulong Hash(ReadOnlySpan<byte> id)
    {
        var hash = 14_695_981_039_346_656_037;
        foreach (var octet in id)
        {
            hash = (hash ^ octet) * 1_099_511_628_211;
        }

        hash ^= hash >> 32;
        return Math.Max(1, hash * 0x9E37_79B9_7F4A_7C15);
    }
}
