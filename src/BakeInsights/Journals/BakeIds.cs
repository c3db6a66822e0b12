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

    private const int FirstCapacity = 1 << 12;
    private const double FullestShare = 0.7;

    // Places are kept apart from the hashes: a pair of them would be padded to twice the size.
    private ulong[] _hashes = new ulong[FirstCapacity];
    private Place[] _places = new Place[FirstCapacity];
    private readonly List<string> _files = [];
    private int _count;
    private ulong _last;
    private Place _lastPlace;

    /// <summary>Whether so far every repeat was found, and not only that of a neighbour.</summary>
    public bool AreAllRemembered => _count < Remembered;

    /// <summary>Where this name stood before, or null when it is new; then it is remembered.</summary>
    public SourceLine? FindOrAdd(ReadOnlySpan<byte> id, string file, long line)
    {
        if (_files.Count == 0 || _files[^1] != file)
        {
            _files.Add(file);
        }

        var place = new Place((ushort)(_files.Count - 1), (uint)line);
        var hash = Hash(id);
        if (!AreAllRemembered)
        {
            var before = hash == _last ? At(_lastPlace) : null;
            (_last, _lastPlace) = (hash, place);
            return before;
        }

        var slot = SlotOf(_hashes, hash);
        if (_hashes[slot] == hash)
        {
            return At(_places[slot]);
        }

        (_hashes[slot], _places[slot]) = (hash, place);
        (_last, _lastPlace) = (hash, place);
        if (++_count == Remembered)
        {
            (_hashes, _places) = ([], []);
        }
        else if (_count > FullestShare * _hashes.Length)
        {
            Grow();
        }

        return null;
    }

    private SourceLine At(Place place) => new(_files[place.File], place.Line);

    private void Grow()
    {
        var hashes = new ulong[_hashes.Length * 2];
        var places = new Place[hashes.Length];
        for (var i = 0; i < _hashes.Length; i++)
        {
            if (_hashes[i] != 0)
            {
                var slot = SlotOf(hashes, _hashes[i]);
                (hashes[slot], places[slot]) = (_hashes[i], _places[i]);
            }
        }

        (_hashes, _places) = (hashes, places);
    }

    // Open addressing, one step at a time; a slot that holds 0 is free.
    private static int SlotOf(ulong[] hashes, ulong hash)
    {
        var mask = hashes.Length - 1;
        var slot = (int)(hash >> 32) & mask;
        while (hashes[slot] != 0 && hashes[slot] != hash)
        {
            slot = (slot + 1) & mask;
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

    [System.Runtime.InteropServices.StructLayout(System.Runtime.InteropServices.LayoutKind.Sequential, Pack = 2)]
    private readonly record struct Place(ushort File, uint Line);
}
